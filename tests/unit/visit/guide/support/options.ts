import type { Damage, Symptom } from '../../../../../src/kernel/vocabulary.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { InspectAnswer } from '../../../../../src/visit/steps/inspect/question.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';
import type { RetryAnswer } from '../../../../../src/visit/steps/retry.ts';
import { typed } from '../../../../support/typed.ts';
import { soundLockout } from './answers.ts';
import { inputs } from './inputs.ts';
import { classOf, isolationClasses } from './isolation-classes.ts';
import { bridges, insulations, windings } from './readings.ts';
import type { Given } from './visit.ts';

/**
 * One class of answer. `stops`: by the rules the visit may not go on with it. `like`: answers of one step
 * with the same word differ only in the decision, in nothing before it; the walk continues with one of them and tries
 * the others as variants.
 */
export interface Option {
  given: Given;
  stops: boolean;
  like: string;
}

const option = (given: Given, stops: boolean, like: string): Option => ({ given, stops, like });

const damages: Damage[] = ['nothing', 'burnt', 'wet', 'chafed'];
const symptoms: Symptom[] = [
  'control-off',
  'on-enable',
  'on-acceleration',
  'on-braking',
  'position-or-cable',
  'when-hot',
  'now-and-then',
];

const findDrive: Option[] = [
  option(['find-drive', { observation: 'looked', axesOnDrive: 2, indicatedAxis: 2 }], false, 'found'),
  option(['find-drive', { observation: 'looked', axesOnDrive: 1, indicatedAxis: 1 }], false, 'found'),
  option(['find-drive', { observation: 'not-permitted', axesOnDrive: 2 }], false, 'found'),
  option(['find-drive', { observation: 'known', axesOnDrive: 1 }], false, 'found'),
  option(['find-drive', { observation: 'looked', axesOnDrive: 2, indicatedAxis: 3 }], true, ''),
  option(['find-drive', { observation: 'looked', axesOnDrive: 2, indicatedAxis: 0 }], true, ''),
  option(['find-drive', { observation: 'looked', axesOnDrive: 2 }], true, ''),
  option(['find-drive', { observation: 'known', axesOnDrive: 2, indicatedAxis: 3 }], true, ''),
  option(['find-drive', { observation: 'looked', axesOnDrive: 2, indicatedAxis: Number.NaN }], true, ''),
];

const moving = (when: Symptom) => (when === 'control-off' || when === 'on-enable' ? when : 'moving');

const often = [{ came: 5, of: 5 }, { came: 2, of: 6 }, {}];
const needsOwnStep = (when: Symptom) => (when === 'position-or-cable' || when === 'on-braking' ? when : '');

const symptom: Option[] = [
  ...symptoms.flatMap((when) =>
    (['yes', 'unknown', 'no'] as const).flatMap((gravityLoaded) =>
      often.map((how) =>
        option(
          ['symptom', { when, gravityLoaded, ...how }],
          false,
          `${moving(when)} ${needsOwnStep(when)} ${gravityLoaded === 'no' ? 'stays' : 'may fall'}`,
        ),
      ),
    ),
  ),
  // Fuses or breaker opened with it.
  ...(
    [
      ['control-off', 'no'],
      ['on-enable', 'no'],
      ['on-acceleration', 'yes'],
    ] as const
  ).map(([when, gravityLoaded]) =>
    option(
      ['symptom', { when, gravityLoaded, came: 5, of: 5, protection: 'opened' }],
      false,
      `${moving(when)} ${gravityLoaded === 'no' ? 'stays' : 'may fall'} opened`,
    ),
  ),
  option(
    ['symptom', { when: 'on-acceleration', gravityLoaded: 'no', came: 5, of: 5, recorded: 'yes' }],
    false,
    'moving stays recorded',
  ),
  // Something was changed before.
  option(
    ['symptom', { when: 'on-acceleration', gravityLoaded: 'no', came: 5, of: 5, changed: 'something' }],
    false,
    'moving stays changed',
  ),
  option(['symptom', { when: 'on-enable', gravityLoaded: 'no', came: 6, of: 2 }], true, ''),
];

// One that adds a step: others lead the ways that are walked without a recording.
const recording: Option[] = [
  option(['recording', { speaksFor: ['open-core'], read: true }], false, 'points'),
  option(['recording', { speaksFor: ['open-core', 'sensing', 'mechanics'], read: true }], false, 'points'),
];

const lockouts = (id: 'lockout-1' | 'lockout-2' | 'lockout-3' | 'prove-again'): Option[] => {
  const lockout = (change: Partial<typeof soundLockout>, stops: boolean) =>
    option([id, { ...soundLockout, ...change }], stops, 'safe');
  const bus = (text: string) => ({ busVoltage: typed(text, 'voltage') });
  const supply = (text: string) => ({ supplyVoltage: typed(text, 'voltage') });
  const output = (text: string) => ({ outputVoltage: typed(text, 'voltage') });
  return [
    lockout({}, false),
    lockout(bus('48 V'), false),
    lockout({ lockedOut: false }, true),
    lockout({ waited: false }, true),
    lockout({ meterProved: false }, true),
    lockout({ peProved: false }, true),
    lockout(supply('49 V'), false),
    lockout(supply(''), true),
    lockout(supply('230 V'), true),
    lockout(output(''), true),
    lockout(output('60 V'), true),
    lockout(bus(''), true),
    lockout(bus('51 V'), true),
    lockout(bus('565 V'), true),
    lockout(bus('OL'), true),
    lockout(bus('> 1 V'), true),
  ];
};

const looks = (damage: Damage) => (damage === 'nothing' ? 'sound' : 'damaged');

const inspectLike = ({ drive, motor, motorCable, feedbackCable }: InspectAnswer['seen']) => {
  const suspect = motor !== 'nothing' || motorCable !== 'nothing';
  return `drive ${looks(drive)}, feedback ${looks(feedbackCable)}${suspect ? ', suspect' : ''}`;
};

const busAgain: Option[] = [
  ['0.02 V', false],
  ['48 V', false],
  ['', true],
  ['51 V', true],
  ['OL', true],
].map(([text, stops]) =>
  option(['bus-again', { meterProved: true, busVoltage: typed(`${text}`, 'voltage') }], stops === true, 'low'),
);
const busUnproved = option(['bus-again', { meterProved: false, busVoltage: typed('0 V', 'voltage') }], true, '');

const inspect: Option[] = damages.flatMap((drive) =>
  damages.flatMap((motor) =>
    damages.flatMap((motorCable) =>
      damages.flatMap((feedbackCable) =>
        (['yes', 'none', 'no'] as const).map((reseated) => {
          const seen = { drive, motor, motorCable, feedbackCable };
          return option(['inspect', { reseated, seen }], reseated === 'no', inspectLike(seen));
        }),
      ),
    ),
  ),
);

type DoneId =
  | 'unplug-feedback'
  | 'unplug-device-end'
  | 'plug-feedback'
  | 'disconnect-leads'
  | 'support-axis'
  | 'support-again'
  | 'connect-pe'
  | 'reconnect';
const doneOrNot = (id: DoneId): Option[] =>
  [true, false].map((isDone) => option([id, { done: isDone }] as Given, !isDone, 'done'));

type RetryId =
  | 'retry-feedback-off'
  | 'retry-device-end'
  | 'retry-feedback-on'
  | 'retry-leads-off'
  | 'retry-stripped'
  | 'retry-all';
const results: Omit<RetryAnswer, 'powerAllowed'>[] = [
  { result: 'trips', tries: 3, trips: 3, stage: 'at-power' },
  { result: 'trips', tries: 3, trips: 3, stage: 'at-enable' },
  { result: 'trips', tries: 3, trips: 3, stage: 'moving' },
  { result: 'trips', tries: 8, trips: 1, stage: 'at-power' },
  { result: 'trips', tries: 3, trips: 3 },
  { result: 'trips' },
  { result: 'no-trip', tries: 3, trips: 0 },
  { result: 'no-trip', tries: 8 },
  { result: 'no-trip', tries: 8, asItTrips: true },
  { result: 'no-trip' },
  { result: 'other-message' },
  { result: 'not-done' },
];
const contradictory: Omit<RetryAnswer, 'powerAllowed'>[] = [
  { result: 'trips', tries: 2, trips: 3 },
  { result: 'trips', tries: 2, trips: 0 },
  { result: 'no-trip', tries: 3, trips: 1 },
];
const retries = (id: RetryId): Option[] => [
  ...results.flatMap((one) =>
    [true, false].map((powerAllowed) =>
      option([id, { powerAllowed, ...one }] as Given, !powerAllowed && one.result !== 'not-done', one.result),
    ),
  ),
  ...contradictory.map((one) => option([id, { powerAllowed: true, ...one }] as Given, true, '')),
];

const bendTest: Option[] = (
  [
    ['steady', true],
    ['steady', false],
    ['not-done', false],
    ['opens', true, 'power'],
    ['opens', false, 'screen'],
    ['leaks', true, 'feedback'],
    ['leaks', false, 'feedback'],
  ] as const
).map(([result, again, core]) =>
  option(
    ['bend-test', { result, again, ...(core !== undefined && { core }) }],
    false,
    result === 'opens' || result === 'leaks' ? 'bad' : 'other',
  ),
);

const idleCores: Option[] = [
  option(['idle-cores', { cores: 'none', lowest: typed('') }], false, 'free'),
  option(['idle-cores', { cores: 'measured', lowest: typed('> 20 MΩ') }], false, 'free'),
  option(['idle-cores', { cores: 'measured', lowest: typed('5 MΩ') }], false, 'free'),
  option(['idle-cores', { cores: 'measured', lowest: typed('20k') }], false, 'not free'),
  option(['idle-cores', { cores: 'measured', lowest: typed('< 1k') }], false, 'not free'),
  option(['idle-cores', { cores: 'measured', lowest: typed('OL') }], true, ''),
  option(['idle-cores', { cores: 'measured', lowest: typed('') }], true, ''),
  option(['idle-cores', { cores: 'not-done', lowest: typed('') }], false, 'not free'),
];

const nothingRead = { plate: typed(''), ohms: typed(''), toPe: typed(''), toBus: typed(''), again: false };
const circuit = (ohms: string, toPe: string, toBus: string, again: boolean, like: string): Option => {
  const read = { plate: typed('47 Ω'), ohms: typed(ohms), toPe: typed(toPe), toBus: typed(toBus), again };
  return option(['braking', { fitted: 'external', ...read }], ohms === '', like);
};
const braking: Option[] = [
  option(['braking', { fitted: 'none', ...nothingRead }], false, 'other'),
  option(['braking', { fitted: 'inside', ...nothingRead }], false, 'other'),
  option(['braking', { fitted: 'not-done', ...nothingRead }], false, 'other'),
  circuit('46.5 Ω', '> 20 MΩ', '350k', false, 'other'),
  circuit('46.5 Ω', 'OL', 'OL', false, 'other'),
  circuit('OL', '> 20 MΩ', '350k', false, 'other'),
  circuit('12 Ω', '> 20 MΩ', '350k', true, 'bad'),
  circuit('46.5 Ω', '3k', '350k', false, 'bad'),
  circuit('46.5 Ω', '> 20 MΩ', '0.4 Ω', true, 'bad'),
  circuit('', '', '', false, ''),
];

const stripDrive: Option[] = [
  option(['strip-drive', { state: 'all-off' }], false, 'stripped'),
  option(['strip-drive', { state: 'some-left' }], false, 'stripped'),
  option(['strip-drive', { state: 'not-allowed' }], false, 'left'),
];

const afterChange: Option[] = (['same', 'corrected', 'wrong', 'not-compared'] as const).map((found) =>
  option(['after-change', { found }], false, found === 'wrong' ? 'wrong' : 'may be tried'),
);

const moves = {
  free: 'moves',
  'free-without-leads': 'moves',
  stiff: 'hindered',
  'brake-drags': 'hindered',
  held: 'moves',
  'not-checked': 'moves',
} as const;
const mechanics: Option[] = (Object.keys(moves) as (keyof typeof moves)[]).map((found) =>
  option(['mechanics', { found }], false, moves[found]),
);

/** What follows these depends only on whether they pass; the decision differs, and variants try it. */
const passesOrNot = (verdict: string) => (verdict === 'go' ? 'passes' : 'does not pass');

type Measurement = 'bridge' | 'input-circuit' | 'insulation' | 'isolation' | 'winding' | 'winding-motor';
function measurements(
  id: Measurement,
  all: Record<string, { verdict: string }>,
  like: (verdict: string) => string = (verdict) => verdict,
): Option[] {
  return Object.entries(all).flatMap(([name, assessment]) =>
    [true, false].map((leftOpen) => {
      const stops = name === 'busCharged' || (assessment.verdict === 'undecided' && !leftOpen);
      const celsius = name.endsWith('Hot') ? 60 : 20;
      return option([id, { assessment, leftOpen, celsius }] as unknown as Given, stops, like(assessment.verdict));
    }),
  );
}

const classes = [...isolationClasses()];

/** A part is known when its own readings prove it, or when the joined ones clear it and nothing points at it. */
function isolation(suspect: boolean): Option[] {
  return classes.flatMap(([, assessment]) =>
    [true, false].map((leftOpen) => {
      const { cable, motor } = assessment.parts;
      const open = [cable, motor].some(
        (part) => part === 'not-tested' || part === 'undecided' || (suspect && part === 'not-suspect'),
      );
      const stops = (open || assessment.verdict === 'undecided') && !leftOpen;
      const like = passesOrNot(open ? 'open' : assessment.verdict);
      return option(['isolation', { assessment, leftOpen }], stops, like);
    }),
  );
}

const isolationOptions = { suspect: isolation(true), unsuspected: isolation(false) };

function isSuspect(visit: VisitAnswers): boolean {
  const seen = visit.inspect?.answer.seen;
  const looksBad = seen !== undefined && (seen.motor !== 'nothing' || seen.motorCable !== 'nothing');
  const when = visit.symptom?.answer.when;
  const asAWhole = visit['retry-all']?.answer.result === 'trips' && when !== 'control-off';
  const through = visit.winding?.answer.assessment.verdict;
  const joint = through === 'no-go' && visit['winding-motor']?.answer.assessment.verdict === 'go';
  return looksBad || asAWhole || joint || when === 'position-or-cable';
}

const fixed: Record<Exclude<StepId, 'isolation'>, Option[]> = {
  'find-drive': findDrive,
  symptom,
  recording,
  'lockout-1': lockouts('lockout-1'),
  'lockout-2': lockouts('lockout-2'),
  'lockout-3': lockouts('lockout-3'),
  'prove-again': lockouts('prove-again'),
  'bus-again': [...busAgain, busUnproved],
  inspect,
  'unplug-feedback': doneOrNot('unplug-feedback'),
  'retry-feedback-off': retries('retry-feedback-off'),
  'unplug-device-end': doneOrNot('unplug-device-end'),
  'retry-device-end': retries('retry-device-end'),
  'plug-feedback': doneOrNot('plug-feedback'),
  'retry-feedback-on': retries('retry-feedback-on'),
  'after-change': afterChange,
  mechanics,
  'disconnect-leads': doneOrNot('disconnect-leads'),
  'support-axis': doneOrNot('support-axis'),
  'retry-leads-off': retries('retry-leads-off'),
  bridge: measurements('bridge', bridges),
  insulation: measurements('insulation', { ...insulations, goodHot: insulations.good }, passesOrNot),
  'input-circuit': measurements('input-circuit', inputs, passesOrNot),
  braking,
  'strip-drive': stripDrive,
  'retry-stripped': retries('retry-stripped'),
  'bend-test': bendTest,
  'idle-cores': idleCores,
  winding: measurements('winding', windings),
  'winding-motor': measurements('winding-motor', windings, passesOrNot),
  'support-again': doneOrNot('support-again'),
  'connect-pe': doneOrNot('connect-pe'),
  reconnect: doneOrNot('reconnect'),
  'retry-all': retries('retry-all'),
};

/** Every class of answer that a person can give at this step. */
export function optionsOf(id: StepId, visit: VisitAnswers): Option[] {
  if (id !== 'isolation') return fixed[id];
  return isolationOptions[isSuspect(visit) ? 'suspect' : 'unsuspected'];
}

const groups = new Map<Option[], Map<string, Option[]>>();

/** The answers that let the visit go on and are of the same class as this one. */
export function alike(options: Option[], like: string): Option[] {
  const known =
    groups.get(options) ??
    Map.groupBy(
      options.filter(({ stops }) => !stops),
      (one) => one.like,
    );
  groups.set(options, known);
  return known.get(like) ?? [];
}

export const isolationClassNames = classes.map(([, assessment]) => classOf(assessment));
