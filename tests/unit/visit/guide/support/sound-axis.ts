import { assessBridge, type BridgeInput } from '../../../../../src/calculators/bridge/rule/assess.ts';
import { assessInsulation } from '../../../../../src/calculators/insulation/rule/assess.ts';
import type { InsulationInput } from '../../../../../src/calculators/insulation/rule/input.ts';
import { assessIsolation } from '../../../../../src/calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../../../../src/calculators/isolation/rule/input.ts';
import { assessWinding, type WindingInput } from '../../../../../src/calculators/winding/rule/assess.ts';
import type { Reading } from '../../../../../src/kernel/reading/reading.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { Answers } from '../../../../../src/visit/steps/questions.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import { stage } from './readings.ts';

/*
 * What a technician reads at an axis whose parts are all sound, with every second reading taken. Nothing here is bad, so
 * whatever speaks against a part is a false reading.
 */

const volts = (text: string) => typed(text, 'voltage');
const at20 = typed('20 °C', 'temperature');
const megohms = '300M | 310M | 305M';
const again = typed('300M');

const bridge: BridgeInput = {
  busVoltage: volts('0.02 V'),
  motorLeads: 'off',
  dcPlus: typedPhases('450k | 455k | 460k'),
  dcMinus: typedPhases('45k | 45.5k | 46k'),
  plusAgain: typed('450k'),
  minusAgain: typed('45k'),
  plusExchanged: typed('5M'),
  minusExchanged: typed('5M'),
  worstAgain: typed('45k'),
  dcBus: typed('30k'),
  sister: 'alike',
};
const insulation: InsulationInput = {
  occasion: 'after-trip',
  readings: typedPhases(megohms),
  pe: typed('0.2 Ω'),
  idleCores: 'none',
  testVoltage: volts('500 V'),
  ratedVoltage: volts('400 V'),
  windingTemperature: at20,
  ambient: typed('', 'temperature'),
  humidity: typed('', 'percent'),
  machineClass: 'random-wound',
  correction: 'halving',
  testMinutes: typed('1', 'duration'),
};
const isolation: IsolationInput = {
  joined: stage(`${megohms} | 0.2 Ω`),
  cable: stage('600M | 600M | 600M | 600M'),
  bonded: typedPhases('600M | 600M | 600M'),
  motor: stage('650M | 650M | 650M | 0.2 Ω'),
  peAgain: typed('0.2 Ω'),
  moreOfCable: { again, sister: again, dried: 'yes' },
  moreOfMotor: { again, sister: again, dried: 'yes' },
  idleCores: 'none',
  cableMetres: typed('30 m', 'length'),
  cableMaterial: 'pvc',
  cableTemperature: at20,
  cableEndsChecked: true,
  suspectedAnyway: true,
  testVoltage: volts('500 V'),
  windingTemperature: at20,
  correction: 'halving',
};
const pairs = { UV: typed('1.20 Ω'), VW: typed('1.20 Ω'), WU: typed('1.21 Ω') };
const winding: WindingInput = { readings: pairs, again: pairs, acrossJoint: typed('0.001 Ω'), leads: 'four' };

export const measuring = {
  bridge: { input: bridge, assess: (one: object) => assessBridge(one as BridgeInput) },
  insulation: { input: insulation, assess: (one: object) => assessInsulation(one as InsulationInput) },
  isolation: { input: isolation, assess: (one: object) => assessIsolation(one as IsolationInput) },
  winding: { input: winding, assess: (one: object) => assessWinding(one as WindingInput) },
  'winding-motor': { input: winding, assess: (one: object) => assessWinding(one as WindingInput) },
};
export type Measuring = keyof typeof measuring;

type Path = readonly string[];

/** The places of all readings in an input. */
export function readingsIn(input: object, at: Path = []): { path: Path; reading: Reading }[] {
  return Object.entries(input).flatMap(([name, one]) => {
    if (typeof one !== 'object' || one === null) return [];
    const path = [...at, name];
    return 'kind' in one ? [{ path, reading: one as Reading }] : readingsIn(one, path);
  });
}

/** The same input with another reading in one place. */
export function withReading(input: object, [name = '', ...rest]: Path, reading: Reading): object {
  const inner = (input as Record<string, object>)[name] ?? {};
  return { ...input, [name]: rest.length === 0 ? reading : withReading(inner, rest, reading) };
}

export const answerWith = (step: Measuring, input: object) => ({
  assessment: measuring[step].assess(input),
  leftOpen: true,
  celsius: 60,
});

/** A series of tries as it was, or with one try of it misreported. */
export const series = (trips: number, stage: 'at-power' | 'at-enable' | 'moving') => ({
  powerAllowed: true,
  result: trips > 0 ? ('trips' as const) : ('no-trip' as const),
  ...{ tries: 3, trips, asItTrips: true },
  ...(trips > 0 && { stage }),
});

export const retries = {
  'retry-feedback-off': 'at-power',
  'retry-device-end': 'at-power',
  'retry-feedback-on': 'at-power',
  'retry-leads-off': 'at-enable',
  'retry-stripped': 'at-power',
  'retry-all': 'moving',
} as const satisfies Partial<Record<StepId, string>>;
export type Retry = keyof typeof retries;

const soundBrake = { plate: typed('47 Ω'), ohms: typed('47 Ω'), toPe: typed('> 50M'), toBus: typed('> 2M') };

/** True answers that are no measurements. `tripsOn`: the trip still comes, from something outside all parts. */
export const trueAnswers = (tripsOn: boolean): Partial<Answers> => ({
  'find-drive': { observation: 'looked', axesOnDrive: 2, indicatedAxis: 1 },
  inspect: {
    reseated: 'yes',
    seen: { drive: 'nothing', motor: 'nothing', motorCable: 'nothing', feedbackCable: 'nothing' },
  },
  mechanics: { found: 'free' },
  'idle-cores': { cores: 'measured', lowest: typed('> 50M') },
  'bend-test': { result: 'steady', again: true },
  braking: { fitted: 'external', ...soundBrake, again: true },
  'strip-drive': { state: 'all-off' },
  'retry-feedback-off': series(tripsOn ? 3 : 0, 'at-power'),
  'retry-device-end': series(0, 'at-power'),
  'retry-feedback-on': series(0, 'at-power'),
  'retry-leads-off': series(0, 'at-enable'),
  'retry-stripped': series(0, 'at-power'),
  'retry-all': series(tripsOn ? 3 : 0, 'moving'),
});
