import { assessBridge, type BridgeInput } from '../../calculators/bridge/rule/assess.ts';
import type { RailFinding } from '../../calculators/bridge/rule/rail-findings.ts';
import { worstPosition } from '../../calculators/bridge/rule/second-readings.ts';
import { partsOfPosition } from '../../calculators/bridge/rule/switch-position.ts';
import { assessInsulation } from '../../calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../calculators/isolation/rule/input.ts';
import { assessWinding, type WindingInput } from '../../calculators/winding/rule/assess.ts';
import type { Assessment, Finding } from '../../kernel/assessment/assessment.ts';
import { type Phase, type Phases, phases } from '../../kernel/electrics/phases.ts';
import { limitValue } from '../../kernel/limits.ts';
import { type Instrument, intervalOf } from '../../kernel/reading/interval.ts';
import { celsius, missing, type Reading, volts } from '../../kernel/reading/reading.ts';
import type { Machine } from '../case/machine.ts';
import type { MeterFunction } from '../simulator/instruments.ts';
import { bondedRow, bridgeRows, cableRow, idleToPe, joinedRow, motorRow, readAt, windingRow } from './measure-rows.ts';
import { sisterOf } from './sister.ts';

/** A measurement of the guide in progress: it is assessed, then improved as its own next steps ask. */
export interface Measuring<A extends Assessment> {
  assess(): A;
  /** Does what one of the codes asks; false if the robot can do none of them, or has done them already. */
  improve(codes: readonly string[]): boolean;
}

const accuracy = ({ percent, counts }: MeterFunction): Instrument => ({ percent, counts });

const testerOf = ({ instruments: { insulation } }: Machine): Instrument => ({
  ...accuracy(insulation),
  upperLimit: insulation.upperLimit,
});

const temperatureOf = ({ state }: Machine): Reading => celsius(Math.round(state.windingCelsius), 1);

/** Each action is done at most `times` times; after that the person leaves the step open. */
function onceEach(actions: Record<string, () => void>, times = 1): (codes: readonly string[]) => boolean {
  const left = new Map<string, number>();
  return (codes) => {
    const code = codes.find((one) => one in actions && (left.get(one) ?? times) > 0);
    if (code === undefined) return false;
    left.set(code, (left.get(code) ?? times) - 1);
    actions[code]?.();
    return true;
  };
}

export function measureBridge(machine: Machine, busVoltage: Reading): Measuring<ReturnType<typeof assessBridge>> {
  // Braking resistor and neighbours are off the bus, so that it is the drive that is read.
  machine.change((state) => ({ ...state, brakingResistor: false, dcLink: false }));
  const instrument = accuracy(machine.instruments.ohms);
  const at = (rail: 'plus' | 'minus', phase: Phase, exchanged = false) => readAt(machine, rail, phase, exchanged);
  let more: Partial<BridgeInput> = {};
  let rows = bridgeRows(machine);
  const again = () => {
    rows = bridgeRows(machine);
  };
  const assess = () =>
    assessBridge({ busVoltage, motorLeads: 'off', alsoOnBus: 'nothing', ...rows, ...more, instrument });
  const oddAgain = () => {
    const position = worstOf(assess().findings, rows, instrument);
    if (position === undefined) return;
    const { rail, phase } = partsOfPosition[position];
    more = { ...more, worstAgain: at(rail, phase) };
  };
  return {
    assess,
    improve: onceEach({
      'repeat-more-exactly': again,
      'repeat-short': again,
      'read-row-again': again,
      'read-first-again': () => {
        more = { ...more, plusAgain: at('plus', 'U'), minusAgain: at('minus', 'U') };
      },
      'read-odd-again': oddAgain,
      'read-third-time': oddAgain,
      'exchange-leads': () => {
        more = { ...more, plusExchanged: at('plus', 'U', true), minusExchanged: at('minus', 'U', true) };
      },
      'compare-known-good': () => {
        const sister = bridgeRows(sisterOf(machine));
        more = { ...more, sister: alike(rows, sister, instrument) ? 'alike' : 'differs' };
      },
    }),
  };
}

type BridgeRows = ReturnType<typeof bridgeRows>;

/** The position that is read once more: the lowest short, else the lowest that is odd. */
function worstOf(findings: readonly Finding[], { dcPlus, dcMinus }: BridgeRows, instrument: Instrument) {
  const row = (readings: Phases<Reading>) => ({ readings, again: missing, exchanged: missing });
  return worstPosition(findings as readonly RailFinding[], {
    rows: { plus: row(dcPlus), minus: row(dcMinus) },
    instrument,
  });
}

/** Whether two drives read alike at all six positions, within the tolerance between the phases of one rail. */
function alike(one: BridgeRows, other: BridgeRows, instrument: Instrument): boolean {
  const factor = 1 + limitValue('bridge-tolerance') / 100;
  return (['dcPlus', 'dcMinus'] as const).every((rail) =>
    phases.every((phase) => {
      const [a, b] = [intervalOf(one[rail][phase], instrument), intervalOf(other[rail][phase], instrument)];
      return a.lo <= b.hi * factor && b.lo <= a.hi * factor;
    }),
  );
}

export function measureInsulation(machine: Machine): Measuring<ReturnType<typeof assessInsulation>> {
  const idleCores = idleToPe(machine);
  let row = joinedRow(machine);
  const again = () => {
    row = joinedRow(machine);
  };
  const atRoomTemperature = () => {
    machine.reachRoomTemperature();
    again();
  };
  return {
    assess: () => {
      const { PE: pe, ...readings } = row;
      return assessInsulation({
        occasion: 'after-trip',
        readings,
        idleCores,
        pe,
        testVoltage: volts(machine.instruments.insulation.volts, 1),
        ratedVoltage: volts(400, 1),
        windingTemperature: temperatureOf(machine),
        ambient: missing,
        humidity: missing,
        machineClass: 'random-wound',
        correction: 'halving',
        testMinutes: { kind: 'value', value: 1, unit: 'min' },
        instrument: testerOf(machine),
      });
    },
    improve: onceEach({ 'let-cool': atRoomTemperature, 'let-warm': atRoomTemperature, 'repeat-more-exactly': again }),
  };
}

export function measureIsolation(
  machine: Machine,
  suspectedAnyway: boolean,
): Measuring<ReturnType<typeof assessIsolation>> {
  const idleCores = idleToPe(machine);
  let rows: Pick<IsolationInput, 'joined' | 'cable' | 'bonded' | 'motor'> = { joined: joinedRow(machine) };
  let cableEndsChecked = false;
  let more: Pick<IsolationInput, 'peAgain' | 'moreOfCable' | 'moreOfMotor'> = {};
  const again = () => {
    rows = {
      joined: joinedRow(machine),
      ...(rows.cable && { cable: cableRow(machine) }),
      ...(rows.bonded && { bonded: bondedRow(machine) }),
      ...(rows.motor && { motor: motorRow(machine) }),
    };
  };
  const atRoomTemperature = () => {
    machine.reachRoomTemperature();
    again();
  };
  return {
    assess: () =>
      assessIsolation({
        ...rows,
        ...more,
        idleCores,
        // The simulated motor stands on bonded metal.
        frameEarthed: 'also-otherwise',
        cableMetres: metres(machine.axis.parameters.cableMetres),
        cableTemperature: celsius(Math.round(machine.state.airCelsius), 1),
        cableEndsChecked,
        suspectedAnyway,
        testVoltage: volts(machine.instruments.insulation.volts, 1),
        windingTemperature: temperatureOf(machine),
        correction: 'halving',
        instrument: testerOf(machine),
      }),
    improve: onceEach({
      'repeat-joined': atRoomTemperature,
      'let-motor-cool': atRoomTemperature,
      'let-motor-warm': atRoomTemperature,
      'test-cable-alone': () => {
        rows.cable = cableRow(machine);
      },
      'take-bonded-row': () => {
        rows.bonded = bondedRow(machine);
      },
      'check-ends-free': () => {
        cableEndsChecked = true;
        rows.cable = cableRow(machine);
      },
      'complete-cable': again,
      'test-motor-alone': () => {
        rows.motor = motorRow(machine);
      },
      'complete-motor': atRoomTemperature,
      'read-pe-again': () => {
        more = { ...more, peAgain: joinedRow(machine).PE };
      },
      'read-cable-again': () => {
        machine.dryConnectors();
        more = { ...more, moreOfCable: { again: lowest([bondedRow(machine), cableRow(machine)]), dried: 'yes' } };
      },
      'compare-cable': () => {
        const sister = sisterOf(machine);
        idleToPe(sister);
        more = { ...more, moreOfCable: { ...more.moreOfCable, sister: lowest([cableRow(sister)]) } };
      },
      'compare-motor': () => {
        // Compared at one temperature, that of the room: no conversion then stands between the two.
        atRoomTemperature();
        const sister = lowest([motorRow(sisterOf(machine))]);
        more = { ...more, moreOfMotor: { again: lowest([motorRow(machine)]), dried: 'yes', sister } };
      },
      'read-motor-again': () => {
        machine.dryConnectors();
        more = { ...more, moreOfMotor: { again: lowest([motorRow(machine)]), dried: 'yes' } };
      },
      're-measure-contradiction': () => {
        machine.dryConnectors();
        again();
      },
    }),
  };
}

/** The lowest phase of these rows; a bound counts by its bound. */
const metres = (value: number): Reading => ({ kind: 'value', value, unit: 'm' });

function lowest(rows: readonly Phases<Reading>[]): Reading {
  const all = rows.flatMap((row) => phases.map((phase) => row[phase]));
  const most = (reading: Reading) => intervalOf(reading).hi;
  return all.reduce((low, reading) => (most(reading) < most(low) ? reading : low));
}

export function measureWinding(
  machine: Machine,
  at: 'cable.drive' | 'motor',
): Measuring<ReturnType<typeof assessWinding>> {
  let mode: 'ohms' | 'milliohms' = 'ohms';
  let readings = windingRow(machine, at, mode);
  let more: Pick<WindingInput, 'again'> = {};
  const withFourLeads = () => {
    mode = 'milliohms';
    readings = windingRow(machine, at, mode);
  };
  return {
    assess: () =>
      assessWinding({
        readings,
        ...more,
        instrument: accuracy(machine.instruments[mode]),
        leads: mode === 'milliohms' ? 'four' : 'zeroed',
      }),
    improve: onceEach({
      'use-milliohm-meter': withFourLeads,
      'use-four-leads': withFourLeads,
      'read-pairs-again': () => {
        // Two sets count only with the same instrument, and four leads leave the tips out.
        if (mode === 'ohms') withFourLeads();
        more = { again: windingRow(machine, at, mode) };
      },
    }),
  };
}
