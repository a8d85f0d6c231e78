import type { Damage, Symptom } from '../../../../../src/kernel/vocabulary.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { InspectAnswer } from '../../../../../src/visit/steps/inspect/question.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';
import type { RetryAnswer } from '../../../../../src/visit/steps/retry.ts';
import { typed } from '../../../../support/typed.ts';
import { soundLockout } from './answers.ts';
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

const symptom: Option[] = symptoms.flatMap((when) =>
  (['yes', 'unknown', 'no'] as const).map((gravityLoaded) =>
    option(
      ['symptom', { when, gravityLoaded }],
      false,
      `${moving(when)} ${when === 'position-or-cable' ? 'suspect' : ''} ${gravityLoaded === 'no' ? 'stays' : 'may fall'}`,
    ),
  ),
);

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

const driveLooks = { nothing: 'sound', burnt: 'burnt', wet: 'unfit', chafed: 'unfit' };
const feedbackLooks = { nothing: 'sound', burnt: 'bad', wet: 'wet', chafed: 'bad' };

const inspectLike = ({ drive, motor, motorCable, feedbackCable }: InspectAnswer['seen']) => {
  const suspect = motor !== 'nothing' || motorCable !== 'nothing';
  return `drive ${driveLooks[drive]}, feedback ${feedbackLooks[feedbackCable]}${suspect ? ', suspect' : ''}`;
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

type RetryId = 'retry-feedback-off' | 'retry-device-end' | 'retry-feedback-on' | 'retry-leads-off' | 'retry-all';
const retries = (id: RetryId): Option[] =>
  (['trips', 'no-trip', 'not-done'] as const).flatMap((result: RetryAnswer['result']) =>
    [true, false].map((powerAllowed) =>
      option([id, { powerAllowed, result }] as Given, !powerAllowed && result !== 'not-done', result),
    ),
  );

const mechanics: Option[] = (['free', 'stiff', 'brake-drags', 'not-checked'] as const).map((found) =>
  option(['mechanics', { found }], false, found === 'free' || found === 'not-checked' ? found : 'hindered'),
);

type Measurement = 'bridge' | 'insulation' | 'isolation' | 'winding' | 'winding-motor';
function measurements(id: Measurement, all: Record<string, { verdict: string }>): Option[] {
  return Object.entries(all).flatMap(([name, assessment]) =>
    [true, false].map((leftOpen) => {
      const stops = name === 'busCharged' || (assessment.verdict === 'undecided' && !leftOpen);
      return option([id, { assessment, leftOpen }] as unknown as Given, stops, assessment.verdict);
    }),
  );
}

const classes = [...isolationClasses()];

/** A part is known when its own readings prove it, or when the joined ones clear it and nothing points at it. */
function isolation(suspect: boolean): Option[] {
  return classes.flatMap(([, assessment]) =>
    [true, false].map((leftOpen) => {
      const { cable, motor, protectiveConductor } = assessment.parts;
      const open = [cable, motor].some(
        (part) => part === 'not-tested' || part === 'undecided' || (suspect && part === 'not-suspect'),
      );
      const stops = (open || assessment.verdict === 'undecided') && !leftOpen;
      const bad = (part: string) => (part === 'proven-bad' ? 'bad' : 'other');
      const like = `${assessment.verdict} ${bad(cable)} ${bad(motor)} ${bad(protectiveConductor)}${open ? ' open' : ''}`;
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
  return looksBad || asAWhole || when === 'position-or-cable';
}

const fixed: Record<Exclude<StepId, 'isolation'>, Option[]> = {
  'find-drive': findDrive,
  symptom,
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
  mechanics,
  'disconnect-leads': doneOrNot('disconnect-leads'),
  'support-axis': doneOrNot('support-axis'),
  'retry-leads-off': retries('retry-leads-off'),
  bridge: measurements('bridge', bridges),
  insulation: measurements('insulation', insulations),
  winding: measurements('winding', windings),
  'winding-motor': measurements('winding-motor', windings),
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
