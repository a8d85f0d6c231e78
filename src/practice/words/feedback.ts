import { bridgeFindings } from '../../calculators/bridge/words.ts';
import { insulationFindings } from '../../calculators/insulation/words.ts';
import { isolationFindings } from '../../calculators/isolation/words.ts';
import { windingFindings } from '../../calculators/winding/words.ts';
import { listed, sentenceOf } from '../../kernel/words/sentences.ts';
import { partNames } from '../../visit/words/parts.ts';
import type { Judgement } from '../case/conclusion.ts';
import type { Settled } from '../case/feedback.ts';
import type { VoidPurpose } from '../case/purpose.ts';
import type { Mark } from '../case/time-line.ts';

export const judgementTexts: Record<Judgement, { word: string; why: string }> = {
  right: { word: 'Right', why: 'Your decision fits the truth, and your measurements carry it.' },
  unproven: {
    word: 'Right, not proven',
    why: 'Your decision fits the truth, but you did not take the measurements that carry it. Next time the same guess is wrong.',
  },
  guessed: {
    word: 'Right by luck',
    why: 'The part is the bad one, but no usual measurement can tell it here. Leave it open, and have the test done that tells.',
  },
  'could-be-decided': {
    word: 'Left open',
    why: 'The usual measurements decide this case. The machine stands until somebody takes them.',
  },
  'left-wet': {
    word: 'Water left in',
    why: 'Nothing is bad, but the motor connector is still wet. It trips again, until it is dried and measured again.',
  },
  'sound-part-named': { word: 'A sound part replaced', why: 'You named every bad part, and a sound one with it.' },
  'bad-part-missed': {
    word: 'A bad part left in',
    why: 'A part that is bad stays in the machine. It trips again, or destroys what is new.',
  },
  'wrong-parts': { word: 'Wrong parts', why: 'You named a sound part, and a bad one stays in the machine.' },
};

export const voidTexts: Record<VoidPurpose | 'again', string> = {
  'through-the-drive':
    'Measured with leads still on the drive. The drive lies beside what you wanted to measure, and through the windings every phase reads alike.',
  'pe-still-on': 'PE measured with its core still on the bar: it shows continuity even when it is broken.',
  'multimeter-as-tester': 'Insulation looked at with a multimeter. Its few volts do not show what fails at hundreds.',
  'tells-nothing': 'A hook-up that tells nothing about any part.',
  again: 'Measured again with nothing changed.',
};

/** The parts of a list in words: "motor and motor cable", or "nothing". */
export function partsText(parts: readonly (keyof typeof partNames)[]): string {
  return parts.length === 0 ? 'nothing' : listed(parts.map((part) => partNames[part]));
}

/** The findings of a step that settles the case. */
export function settledTexts({ step, findings }: Settled): string[] {
  switch (step) {
    case 'bridge':
      return findings.map((finding) => sentenceOf(bridgeFindings, finding));
    case 'insulation':
      return findings.map((finding) => sentenceOf(insulationFindings, finding));
    case 'isolation':
      return findings.map((finding) => sentenceOf(isolationFindings, finding));
    default:
      return findings.map((finding) => sentenceOf(windingFindings, finding));
  }
}

/** "Read: bridge check", from the address of an article. */
export function articleLinkText(id: string): string {
  return `Read: ${id
    .slice(id.indexOf('/') + 1)
    .replaceAll('-', ' ')
    .replaceAll(/\bdc\b/g, 'DC')}`;
}

const conclusions: Record<string, string> = {
  nothing: 'Nothing is bad.',
  undecided: 'Undecided: a specialist’s test or drying must tell.',
};

const acts = (count: number) => (count === 1 ? '1 act' : `${count} acts`);

/** Above the time line: the number of unsafe acts, and of acts that showed nothing. */
function lineSummary(all: number, unsafe: number, toldNothing: number): string {
  if (all === 0) return 'You did nothing at the machine.';
  const safety = unsafe === 0 ? 'Nothing was unsafe: you would have come home.' : `${acts(unsafe)} of ${all} unsafe.`;
  return toldNothing === 0 ? safety : `${safety} ${acts(toldNothing)} showed nothing.`;
}

export const feedbackTexts = {
  butUnsafe: (word: string): string => `Unsafe. Decision: ${word.charAt(0).toLowerCase()}${word.slice(1)}`,
  decided: 'You decided',
  conclusion: (named: string): string => conclusions[named] ?? `${named.charAt(0).toUpperCase()}${named.slice(1)}.`,
  truth: 'The truth',
  toReplace: (bad: readonly (keyof typeof partNames)[]): string =>
    bad.length === 0 ? 'Nothing is to be replaced.' : `Bad: ${partsText(bad)}.`,
  over: 'Named, and sound',
  missed: 'Bad, and not named',
  hurt: 'You hurt',
  hurtDrive: 'the drive, with the insulation tester. It has to be replaced now as well.',
  line: 'Your way, act by act',
  lineSummary,
  marks: {
    unsafe: 'Unsafe',
    'told-nothing': 'Showed nothing',
    'not-needed': 'Not needed',
    told: 'Showed something',
  } satisfies Record<Mark['kind'], string>,
  asInAct: (act: number): string => `As in act ${act}.`,
  notNeeded: (title: string): string => `${title}: this case did not need it.`,
  told: (title: string): string => `${title}.`,
  settles: (title: string): string => `${title}: it settles this case.`,
  bus: 'The voltage of the bus',
  way: 'A sound way beside it',
  wayLength: (steps: number, acts: number): string =>
    `${steps} steps, as the guided visit asks them, and the shortest way that is safe. You did ${acts} acts; one step often takes several.`,
  leftOut: 'You left this out.',
  end: 'It ends with this:',
  allPass: 'Every measurement passes, and the trip does not come again. Nothing is replaced, and the axis is watched.',
  finalCases: 'Back to the six cases',
  another: 'Another case',
  again: 'The same case again',
  print: 'Print',
} as const;
