import type { BridgeInput } from '../../src/calculators/bridge/rule/assess.ts';
import type { InsulationInput } from '../../src/calculators/insulation/rule/input.ts';
import type { MoreEvidence } from '../../src/calculators/isolation/rule/conviction.ts';
import type { IsolationInput, PartStatus, StageReadings } from '../../src/calculators/isolation/rule/input.ts';
import type { Verdict } from '../../src/kernel/assessment/assessment.ts';
import type { EndFilter, IdleCores } from '../../src/kernel/assessment/cable-ends.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import cases from '../unit/calculators/hand-worked-cases.json' with { type: 'json' };
import { typed, typedPhases } from './typed.ts';

/** What each case expects, worked by hand from the rules: the verdict, the important codes and steps, and why. */
interface Expected {
  title: string;
  verdict: Verdict;
  why: string;
  codes?: string[];
  absent?: string[];
  steps?: string[];
  absentSteps?: string[];
}

interface StatedInstrument {
  percent?: number;
  counts?: number;
  upperLimit?: string;
}

interface BridgeCase extends Expected {
  plus: string;
  minus: string;
  bus?: string;
  leads?: BridgeInput['motorLeads'];
  tolerance?: number;
  /** The meter tips held together, as typed. */
  tips?: string;
  meter?: StatedInstrument;
  suspects?: string[];
  /** U of DC+, read again last, and the odd terminal once more. */
  plusAgain?: string;
  again?: string;
  onBus?: NonNullable<BridgeInput['alsoOnBus']>;
}

interface InsulationCase extends Expected {
  phases: string;
  occasion?: InsulationInput['occasion'];
  pe?: string;
  test?: string;
  rated?: string;
  winding?: string;
  ambient?: string;
  humidity?: string;
  together?: string;
  rowKind?: 'joined' | 'single';
  idle?: IdleCores;
  filter?: EndFilter;
  class?: InsulationInput['machineClass'];
  method?: InsulationInput['correction'];
  tester?: StatedInstrument;
}

type MoreTyped = [again: string, dried: 'yes' | 'no' | '', sister: string];

interface IsolationCase extends Expected {
  joined: string;
  cable?: string;
  bonded?: string;
  motor?: string;
  ends?: boolean;
  symptom?: boolean;
  test?: string;
  winding?: string;
  method?: IsolationInput['correction'];
  tester?: StatedInstrument;
  idle?: IdleCores;
  filter?: EndFilter;
  /** Length, insulation and temperature of the cable. */
  build?: [metres: string, material: 'pvc' | 'xlpe', temperature: string];
  joinedTogether?: string;
  motorTogether?: string;
  peAgain?: string;
  /** Read again, dried before that, before the trip or a sound one. */
  cableAgain?: MoreTyped;
  motorAgain?: MoreTyped;
  parts?: Partial<Record<'cable' | 'motor' | 'protectiveConductor', PartStatus>>;
}

export const bridgeCases = cases.bridge as BridgeCase[];
export const insulationCases = cases.insulation as InsulationCase[];
export const isolationCases = cases.isolation as IsolationCase[];

function stated({ upperLimit, ...accuracy }: StatedInstrument = {}): Instrument {
  const limit = upperLimit === undefined ? undefined : typed(upperLimit);
  return limit?.kind === 'value' ? { ...accuracy, upperLimit: limit.value } : accuracy;
}

/** Defaults: a discharged bus and the motor leads off. */
export function bridgeInput({
  plus,
  minus,
  bus = '0.02 V',
  leads = 'off',
  tolerance,
  meter,
  tips = '',
  plusAgain = '',
  again = '',
  onBus = 'not-stated',
}: BridgeCase): BridgeInput {
  return {
    busVoltage: typed(bus, 'voltage'),
    motorLeads: leads,
    dcPlus: typedPhases(plus),
    dcMinus: typedPhases(minus),
    instrument: stated(meter),
    tipsTogether: typed(tips),
    plusAgain: typed(plusAgain),
    worstAgain: typed(again),
    alsoOnBus: onBus,
    ...(tolerance === undefined ? {} : { tolerancePercent: tolerance }),
  };
}

/** Defaults: after a trip, 400 V motor at 20 °C, 500 V test, halving rule, PE sound, idle cores at PE, no air. */
export function insulationInput(one: InsulationCase): InsulationInput {
  return {
    occasion: one.occasion ?? 'after-trip',
    readings: typedPhases(one.phases),
    ...(one.together === undefined ? {} : { together: typed(one.together) }),
    ...(one.rowKind === undefined ? {} : { rowKind: one.rowKind }),
    ...(one.filter === undefined ? {} : { filter: one.filter }),
    idleCores: one.idle ?? 'to-pe',
    pe: typed(one.pe ?? '0.2 Ω'),
    testVoltage: typed(one.test ?? '500 V', 'voltage'),
    ratedVoltage: typed(one.rated ?? '400 V', 'voltage'),
    windingTemperature: typed(one.winding ?? '20 °C', 'temperature'),
    ambient: typed(one.ambient ?? '', 'temperature'),
    humidity: typed(one.humidity ?? '', 'percent'),
    machineClass: one.class ?? 'random-wound',
    correction: one.method ?? 'halving',
    instrument: stated(one.tester),
    testMinutes: typed('1 min', 'duration'),
  };
}

function stage(text: string): StageReadings {
  const [U = '', V = '', W = '', PE = ''] = text.split('|');
  return { ...typedPhases([U, V, W].join('|')), PE: typed(PE) };
}

function more([again, dried, sister]: MoreTyped): MoreEvidence {
  return { again: typed(again), sister: typed(sister), ...(dried !== '' && { dried }) };
}

/** Defaults: stage not taken, 500 V test, motor at 20 °C, idle cores at PE, ends not checked, no symptom. */
export function isolationInput(one: IsolationCase): IsolationInput {
  return {
    joined: {
      ...stage(one.joined),
      ...(one.joinedTogether === undefined ? {} : { together: typed(one.joinedTogether) }),
    },
    ...(one.cable === undefined ? {} : { cable: stage(one.cable) }),
    ...(one.bonded === undefined ? {} : { bonded: typedPhases(one.bonded) }),
    ...(one.motor === undefined
      ? {}
      : {
          motor: {
            ...stage(one.motor),
            ...(one.motorTogether === undefined ? {} : { together: typed(one.motorTogether) }),
          },
        }),
    idleCores: one.idle ?? 'to-pe',
    ...(one.filter === undefined ? {} : { filter: one.filter }),
    frameEarthed: 'also-otherwise',
    ...(one.peAgain === undefined ? {} : { peAgain: typed(one.peAgain) }),
    ...(one.cableAgain === undefined ? {} : { moreOfCable: more(one.cableAgain) }),
    ...(one.motorAgain === undefined ? {} : { moreOfMotor: more(one.motorAgain) }),
    ...(one.build === undefined
      ? {}
      : {
          cableMetres: typed(one.build[0], 'length'),
          cableMaterial: one.build[1],
          cableTemperature: typed(one.build[2], 'temperature'),
        }),
    cableEndsChecked: one.ends ?? false,
    suspectedAnyway: one.symptom ?? false,
    testVoltage: typed(one.test ?? '500 V', 'voltage'),
    windingTemperature: typed(one.winding ?? '20 °C', 'temperature'),
    correction: one.method ?? 'halving',
    instrument: stated(one.tester),
  };
}
