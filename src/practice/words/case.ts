/** The machine of the practice: where it stands, and what is known when the person arrives. */
export function practiceStory(axis: string, gravityLoaded: boolean, operator: string): string[] {
  return [
    `Marrow Bay Glassworks, line 2, axis ${axis}. Glassworks, machine and readings are invented.`,
    gravityLoaded
      ? 'The axis is vertical: only its brake holds it, and it can fall.'
      : 'The axis is horizontal: it can’t fall.',
    `The operator says when it trips: ${operator.charAt(0).toLowerCase()}${operator.slice(1)}. The controller and the drive’s own indication both name this axis. The trip stands, the supply is on, the control is off.`,
    'Motor rated 400 V. One drive, one cable, one motor, and the feedback with its own cable.',
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
