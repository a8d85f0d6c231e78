/** What the start of the practice says. */
export const startTexts = {
  title: 'Practice',
  lead: 'A machine has tripped on overcurrent. Measure on a simulated axis, make it safe or not, and decide which parts are bad. You are told at the end what was right.',
  invented: 'The machine is the Marrow Bay Glassworks’ line 2. It is invented, and so is every reading.',
  how: [
    'Do what you would do at the machine: lock out, support, take leads off, measure, try.',
    'Nothing stops you and nothing warns you. A wrong hook-up reads what it would really read.',
    'Decide. Then you see the truth, what was unsafe, what was not needed, and the shortest sound path.',
  ],
  draw: 'Draw a case',
  codeLabel: 'Code of a case',
  codeHint: 'Nine letters and digits, from your trainer or from an earlier case.',
  open: 'Open this case',
  badCode: 'This is no code of a case. Compare it sign by sign; it has nine, such as 7K3-0QW-M2A.',
  goOn: 'Go on with it',
  underWay: (code: string, acts: number): string =>
    `Case ${code} is under way on this device, with ${acts} ${acts === 1 ? 'act' : 'acts'}.`,
} as const;
