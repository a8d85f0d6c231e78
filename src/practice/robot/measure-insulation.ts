import { assessInsulation } from '../../calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../calculators/isolation/rule/input.ts';
import { type Phases, phases } from '../../kernel/electrics/phases.ts';
import { intervalOf } from '../../kernel/reading/interval.ts';
import { celsius, missing, type Reading, volts } from '../../kernel/reading/reading.ts';
import type { Machine } from '../case/machine.ts';
import type { AxisState } from '../simulator/axis-state.ts';
import { bondedRow, cableRow, joinedRow, motorRow } from './measure-rows.ts';
import { type Measuring, onceEach, temperatureOf, testerOf } from './measuring.ts';

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
        ...endsOf(machine),
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
    improve: onceEach({
      ...{ 'let-cool': atRoomTemperature, 'let-warm': atRoomTemperature, 'repeat-more-exactly': again },
      ...clearEnds(machine, again),
    }),
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
    // One temperature stands for all readings of the motor.
    if (more.moreOfMotor) more = { ...more, moreOfMotor: { ...more.moreOfMotor, again: lowest([motorRow(machine)]) } };
  };
  return {
    assess: () =>
      assessIsolation({
        ...rows,
        ...more,
        ...endsOf(machine),
        // The simulated motor stands on bonded metal.
        frameEarthed: 'also-otherwise',
        cableMetres: { kind: 'value', value: machine.axis.parameters.cableMetres, unit: 'm' },
        cableTemperature: celsius(Math.round(machine.state.airCelsius), 1),
        cableEndsChecked,
        suspectedAnyway,
        testVoltage: volts(machine.instruments.insulation.volts, 1),
        windingTemperature: temperatureOf(machine),
        correction: 'halving',
        instrument: testerOf(machine),
      }),
    improve: onceEach({
      ...clearEnds(machine, again),
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
        const lowestAgain = lowest([bondedRow(machine), cableRow(machine)]);
        more = { ...more, moreOfCable: { ...more.moreOfCable, again: lowestAgain, dried: 'yes' } };
      },
      'read-motor-again': () => {
        machine.dryConnectors();
        more = { ...more, moreOfMotor: { ...more.moreOfMotor, again: lowest([motorRow(machine)]), dried: 'yes' } };
      },
      'compare-cable': () => {
        if (!machine.knowsSound) return;
        const sister = lowest([cableRow(machine.sound())]);
        more = { ...more, moreOfCable: { ...more.moreOfCable, sister } };
      },
      'compare-motor': () => {
        if (!machine.knowsSound) return;
        // Compared at the same temperature: a hot winding is far below its own cold one anyway.
        atRoomTemperature();
        more = { ...more, moreOfMotor: { ...more.moreOfMotor, sister: lowest([motorRow(machine.sound())]) } };
      },
      're-measure-contradiction': () => {
        machine.dryConnectors();
        again();
      },
    }),
  };
}

/** What is at the drive end of the cable beside its phases. */
function endsOf({ axis: { parameters }, state }: Machine): Pick<IsolationInput, 'idleCores' | 'filter'> {
  const idle = state.idleCores === 'to-pe' ? 'to-pe' : 'free';
  return {
    idleCores: parameters.idleCores.length === 0 ? 'none' : idle,
    filter: parameters.filterOhms !== undefined && state.filter ? 'fitted' : 'none',
  };
}

function clearEnds(machine: Machine, again: () => void): Record<string, () => void> {
  const then = (to: (state: AxisState) => AxisState) => () => {
    machine.change(to);
    again();
  };
  return {
    'join-idle-cores': then((state) => ({ ...state, idleCores: 'to-pe' })),
    'take-filter-off': then((state) => ({ ...state, filter: false })),
  };
}

/** The lowest phase of these rows; a bound counts by its bound. */
function lowest(rows: readonly Phases<Reading>[]): Reading {
  const all = rows.flatMap((row) => phases.map((phase) => row[phase]));
  const most = (reading: Reading) => intervalOf(reading).hi;
  return all.reduce((low, reading) => (most(reading) < most(low) ? reading : low));
}
