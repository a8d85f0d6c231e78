/** The start page of the practice. */
export const startTexts = {
  title: 'Practice',
  lead: 'A machine has tripped on overcurrent. Measure on a simulated axis, make it safe or not, and decide which parts are bad. At the end you see what was right.',
  invented: 'The machine is the Marrow Bay Glassworks’ line 2. It is invented, and so is every reading.',
  how: [
    'Do what you would do at the machine: lock out, support, take leads off, measure, try.',
    'Nothing stops you and nothing warns you. A wrong hook-up reads what it would really read.',
    'Decide. Then you see the truth, what was unsafe, what was not needed, and the shortest sound path.',
  ],
  draw: 'Draw a case',
  levels:
    'Easier: one bad part that the usual measurements name. Harder: causes as often as a technician meets them, on old motors, long cables and drives with several axes. Often no part is bad, or today’s measurements can’t tell.',
  drawClear: 'Draw an easier case',
  drawField: 'Draw a case as in the field',
  codeLabel: 'Code of a case',
  codeHint: 'Nine letters and digits, from your trainer or from an earlier case.',
  open: 'Open this case',
  badCode: 'That is not a case code. Check it character by character; it has nine, such as 7K3-0QW-M2A.',
  goOn: 'Go on with it',
  underWay: (code: string, acts: number): string =>
    `Case ${code} is under way on this device, with ${acts} ${acts === 1 ? 'act' : 'acts'}.`,
} as const;

/** The three axes of the invented line 2: Lift is the vertical one. */
export function axisName(code: string, gravityLoaded: boolean): string {
  if (gravityLoaded) return 'Lift';
  return code.charCodeAt(0) % 2 === 0 ? 'Bridge' : 'Carriage';
}

/** Which machine it is, and what is known when the person arrives. */
export function practiceStory(axis: string, gravityLoaded: boolean, operator: string, inField: boolean): string[] {
  return [
    `Marrow Bay Glassworks, line 2, axis ${axis}. Glassworks, machine and readings are invented.`,
    gravityLoaded
      ? 'The axis is vertical: only its brake holds it, and it can fall.'
      : 'The axis is horizontal: it can’t fall.',
    `The operator says when it trips: ${operator.charAt(0).toLowerCase()}${operator.slice(1)}. The controller and the drive’s own indication both name this axis. The trip stands, the supply is on, the control is off.`,
    inField
      ? 'Motor rated 400 V. What else is on this drive and in its cable you find out at the machine.'
      : 'Motor rated 400 V. One drive, one cable, one motor, and the feedback with its own cable.',
  ];
}

export const conclusionTexts = {
  question: 'What do you decide?',
  replace: 'Replace or mend what I tick',
  nothing: 'Nothing is bad: it goes back to work, and is watched',
  undecided: 'Undecided: a specialist’s test or drying must tell first',
  partsQuestion: 'Which parts?',
  end: 'End the case and show what was right',
  noneChosen: 'Choose what you decide.',
  noPart: 'Tick at least one part, or choose another decision.',
} as const;
