import { assessBridge } from '../../calculators/bridge/rule/assess.ts';
import { assessInsulation } from '../../calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../calculators/isolation/rule/input.ts';
import { assessWinding } from '../../calculators/winding/rule/assess.ts';
import type { Assessment } from '../../kernel/assessment/assessment.ts';
import { type Phases, phases } from '../../kernel/electrics/phases.ts';
import { type Instrument, intervalOf } from '../../kernel/reading/interval.ts';
import { celsius, missing, type Reading, volts } from '../../kernel/reading/reading.ts';
import type { Machine } from '../case/machine.ts';
import type { MeterFunction } from '../simulator/instruments.ts';
import { bondedRow, bridgeRows, cableRow, joinedRow, motorRow, windingRow } from './measure-rows.ts';

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
  let rows = bridgeRows(machine);
  const again = () => {
    rows = bridgeRows(machine);
  };
  return {
    assess: () =>
      assessBridge({ busVoltage, motorLeads: 'off', ...rows, instrument: accuracy(machine.instruments.ohms) }),
    improve: onceEach({ 'repeat-more-exactly': again, 'repeat-short': again }),
  };
}

export function measureInsulation(machine: Machine): Measuring<ReturnType<typeof assessInsulation>> {
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
        // The simulated cable has three cores, PE and screen.
        idleCores: 'none',
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
        idleCores: 'none',
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
  const withFourLeads = () => {
    mode = 'milliohms';
    readings = windingRow(machine, at, mode);
  };
  return {
    assess: () =>
      assessWinding({
        readings,
        instrument: accuracy(machine.instruments[mode]),
        leads: mode === 'milliohms' ? 'four' : 'zeroed',
      }),
    improve: onceEach({ 'use-milliohm-meter': withFourLeads, 'use-four-leads': withFourLeads }),
  };
}
