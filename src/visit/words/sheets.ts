/** The sheets of the report that can be printed. */
export const sheetNames = {
  owner: 'Sheet for the owner',
  parts: 'Sheet for the parts desk',
  annex: 'Annex: what was measured and done',
} as const;

export type Sheet = keyof typeof sheetNames;

export const sheets = Object.keys(sheetNames) as Sheet[];

/** Words of the sheets. What was decided and why comes from the decision's own sentences. */
export const sheetTexts = {
  choose: 'What to print',
  print: 'Print, or save as PDF',
  chooseOne: 'Choose at least one sheet.',
  replace: 'Replace',
  suspect: 'Suspect, not proven: do not order on this',
  stays: 'Stays',
  excluded: 'Not the cause by these readings',
  measuredGood: 'Measured and good.',
  suspectParts: 'Suspect, not proven, not replaced',
  goodParts: 'Measured and good, stays',
  parts: 'Parts and what to do with them',
  where: 'What the readings say',
  notNoted: 'not noted',
  onlyThese: 'Order what stands beside “Replace”, and nothing else, on this sheet.',
  orderNothing: 'Order nothing on this sheet.',
} as const;
