import {
  assessBridge,
  type BridgeAssessment,
  type BridgeInput,
} from '../../../../../src/calculators/bridge/rule/assess.ts';
import { assessInsulation } from '../../../../../src/calculators/insulation/rule/assess.ts';
import type { InsulationAssessment, InsulationInput } from '../../../../../src/calculators/insulation/rule/input.ts';
import { assessIsolation } from '../../../../../src/calculators/isolation/rule/assess.ts';
import type {
  IsolationAssessment,
  IsolationInput,
  StageReadings,
} from '../../../../../src/calculators/isolation/rule/input.ts';
import { assessWinding, type WindingAssessment } from '../../../../../src/calculators/winding/rule/assess.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

/** The six readings, `DC+ to U | V | W` and `DC− to U | V | W`, motor leads off, bus discharged. */
export function bridge(dcPlus: string, dcMinus: string, other: Partial<BridgeInput> = {}): BridgeAssessment {
  return assessBridge({
    busVoltage: typed('0.02 V', 'voltage'),
    motorLeads: 'off',
    dcPlus: typedPhases(dcPlus),
    dcMinus: typedPhases(dcMinus),
    ...other,
  });
}

/** `U | V | W` to PE at 500 V and 20 °C, and the PE pin to the frame. */
export function insulation(phases: string, pe = '0.2 Ω', other: Partial<InsulationInput> = {}): InsulationAssessment {
  return assessInsulation({
    occasion: 'after-trip',
    readings: typedPhases(phases),
    pe: typed(pe),
    idleCores: 'none',
    testVoltage: typed('500 V', 'voltage'),
    ratedVoltage: typed('400 V', 'voltage'),
    windingTemperature: typed('20 °C', 'temperature'),
    ambient: typed('', 'temperature'),
    humidity: typed('', 'percent'),
    machineClass: 'random-wound',
    correction: 'halving',
    testMinutes: typed('1', 'duration'),
    ...other,
  });
}

/** `U | V | W | PE` of one stage. */
export function stage(text: string): StageReadings {
  const [U = '', V = '', W = '', PE = ''] = text.split('|');
  return { U: typed(U), V: typed(V), W: typed(W), PE: typed(PE) };
}

export interface IsolationRows {
  joined: string;
  cable?: string;
  bonded?: string;
  motor?: string;
}

/** Joined, cable alone, bonded row and motor alone, as far as they were measured, at 500 V and 20 °C. */
export function isolation(rows: IsolationRows, other: Partial<IsolationInput> = {}): IsolationAssessment {
  return assessIsolation({
    joined: stage(rows.joined),
    ...(rows.cable === undefined ? {} : { cable: stage(rows.cable) }),
    ...(rows.bonded === undefined ? {} : { bonded: typedPhases(rows.bonded) }),
    ...(rows.motor === undefined ? {} : { motor: stage(rows.motor) }),
    idleCores: 'none',
    cableEndsChecked: true,
    suspectedAnyway: false,
    testVoltage: typed('500 V', 'voltage'),
    windingTemperature: typed('20 °C', 'temperature'),
    correction: 'halving',
    ...other,
  });
}

/** Phase to phase by four leads: `U–V | V–W | W–U`. */
export function winding(text: string): WindingAssessment {
  const { U: UV, V: VW, W: WU } = typedPhases(text);
  return assessWinding({ readings: { UV, VW, WU }, leads: 'four' });
}

/** The same assessment, with what a calculator says of the part once a second reading agrees. */
export function convicted(assessment: BridgeAssessment): BridgeAssessment {
  return Object.assign({}, assessment, { drive: 'convicted' as const });
}

export function suspectDrive(assessment: BridgeAssessment): BridgeAssessment {
  return Object.assign({}, assessment, { drive: 'suspect' as const });
}

export function causedBy(assessment: WindingAssessment, cause: 'winding' | 'open' | 'contact'): WindingAssessment {
  return Object.assign({}, assessment, { cause });
}

/** With every part that fails proven bad, or every one only suspect. */
export function parts(assessment: IsolationAssessment, as: 'proven-bad' | 'suspect'): IsolationAssessment {
  const fails = (status: string) => status === 'proven-bad' || status === 'suspect';
  const changed = Object.entries(assessment.parts).map(([part, status]) => [part, fails(status) ? as : status]);
  return { ...assessment, parts: Object.fromEntries(changed) };
}

const proves = (rows: IsolationRows, other: Partial<IsolationInput> = {}) =>
  parts(isolation(rows, other), 'proven-bad');

/** Readings that the tests name. */
export const bridges = {
  good: bridge('450k | 455k | 460k', '45k | 45.5k | 46k'),
  shorted: convicted(bridge('450k | 455k | 460k', '45k | 0.3 Ω | 46k')),
  shortedOnce: suspectDrive(bridge('450k | 455k | 460k', '45k | 0.3 Ω | 46k')),
  tooClose: bridge('450k | 455k | 460k', '45k | 48k | 50k', { instrument: { percent: 2 } }),
  incomplete: bridge('450k | 455k | ', '45k | 45.5k | 46k'),
  busCharged: bridge('450k | 455k | 460k', '45k | 45.5k | 46k', { busVoltage: typed('310 V', 'voltage') }),
};

export const insulations = {
  good: insulation('> 700M | > 700M | > 700M'),
  dead: insulation('0.02M | 0.02M | 0.02M'),
  low: insulation('12M | 13M | 12M'),
  peBroken: insulation('> 700M | > 700M | > 700M', 'OL'),
  warm: insulation('60M | 61M | 60M', '0.2 Ω', { windingTemperature: typed('45 °C', 'temperature') }),
  noTemperature: insulation('> 700M | > 700M | > 700M', '0.2 Ω', { windingTemperature: typed('', 'temperature') }),
};

const joinedBad = '0.02M | 0.02M | 0.02M | 0.2 Ω';
const joinedGood = '> 700M | > 700M | > 700M | 0.2 Ω';
const cableGood = '> 700M | > 700M | > 700M | > 700M';
const cableBad = '0.02M | > 700M | > 700M | > 700M';
const bondedGood = '> 700M | > 700M | > 700M';
const bondedBad = '0.02M | > 700M | > 700M';
const motorGood = '> 700M | > 700M | > 700M | 0.2 Ω';
const motorBad = '0.02M | 0.02M | 0.02M | 0.2 Ω';

export const isolations = {
  bothGood: proves(
    { joined: joinedGood, cable: cableGood, bonded: bondedGood, motor: motorGood },
    { suspectedAnyway: true },
  ),
  joinedGoodOnly: proves({ joined: joinedGood }),
  motorBad: proves({ joined: joinedBad, cable: cableGood, bonded: bondedGood, motor: motorBad }),
  motorSuspect: parts(
    isolation({ joined: joinedBad, cable: cableGood, bonded: bondedGood, motor: motorBad }),
    'suspect',
  ),
  cableBad: proves({ joined: joinedBad, cable: cableBad, bonded: bondedGood, motor: motorGood }),
  cableBadInside: proves({ joined: joinedBad, cable: cableGood, bonded: bondedBad, motor: motorGood }),
  coreToCore: proves(
    { joined: joinedGood, cable: cableGood, bonded: '3M | 3M | > 700M', motor: motorGood },
    { suspectedAnyway: true },
  ),
  bothBad: proves({ joined: joinedBad, cable: cableBad, bonded: bondedGood, motor: motorBad }),
  peBroken: proves({
    joined: '> 700M | > 700M | > 700M | OL',
    cable: cableGood,
    bonded: bondedGood,
    motor: motorGood,
  }),
  motorPeBroken: proves({
    joined: '> 700M | > 700M | > 700M | OL',
    cable: cableGood,
    bonded: bondedGood,
    motor: '> 700M | > 700M | > 700M | OL',
  }),
  contradiction: proves({ joined: joinedBad, cable: cableGood, bonded: bondedGood, motor: motorGood }),
  cableBadMotorOpen: proves({ joined: joinedBad, cable: cableBad, bonded: bondedGood }),
  motorBadCableOpen: proves({ joined: joinedBad, motor: motorBad }),
  nothingSeparated: proves({ joined: joinedBad }),
  joinedUnclear: proves(
    { joined: '> 700M | > 700M |  | 0.2 Ω', cable: cableGood, bonded: bondedGood, motor: motorGood },
    { suspectedAnyway: true },
  ),
};

export const windings = {
  alike: winding('1.20 Ω | 1.20 Ω | 1.21 Ω'),
  open: causedBy(winding('OL | 1.20 Ω | OL'), 'winding'),
  unlike: causedBy(winding('1.20 Ω | 1.20 Ω | 0.90 Ω'), 'winding'),
  contact: causedBy(winding('1.20 Ω | 1.20 Ω | 0.90 Ω'), 'contact'),
  between: winding('1.200 Ω | 1.200 Ω | 1.260 Ω'),
  incomplete: winding('1.20 Ω | 1.20 Ω | '),
};
