import { assessBridge } from '../../calculators/bridge/rule/assess.ts';
import { assessInsulation } from '../../calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../calculators/isolation/rule/input.ts';
import { assessWinding } from '../../calculators/winding/rule/assess.ts';
import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { Instrument } from '../../kernel/reading/interval.ts';
import { celsius, missing, type Reading, volts } from '../../kernel/reading/reading.ts';
import type { World } from '../case/world.ts';
import type { MeterFunction } from '../simulator/instruments.ts';
import { bondedRow, bridgeRows, cableRow, joinedRow, motorRow, windingRow } from './rows.ts';

/** One measurement of the guide under way: assessed, and improved as its own next steps ask. */
export interface Measuring<A extends Assessment> {
  assess(): A;
  /** Does what the codes ask; false where none of them is anything that the robot can do, or did already. */
  improve(codes: readonly string[]): boolean;
}

const accuracy = ({ percent, counts }: MeterFunction): Instrument => ({ percent, counts });

const testerOf = ({ instruments: { insulation } }: World): Instrument => ({
  ...accuracy(insulation),
  upperLimit: insulation.upperLimit,
});

const temperatureOf = ({ state }: World): Reading => celsius(Math.round(state.windingCelsius), 1);

/** A thing is done at most this often: after that the person leaves it open. */
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

export function measureBridge(world: World, busVoltage: Reading): Measuring<ReturnType<typeof assessBridge>> {
  let rows = bridgeRows(world);
  const again = () => {
    rows = bridgeRows(world);
  };
  return {
    assess: () =>
      assessBridge({ busVoltage, motorLeads: 'off', ...rows, instrument: accuracy(world.instruments.ohms) }),
    improve: onceEach({ 'repeat-more-exactly': again, 'repeat-short': again }),
  };
}

export function measureInsulation(world: World): Measuring<ReturnType<typeof assessInsulation>> {
  let row = joinedRow(world);
  const again = () => {
    row = joinedRow(world);
  };
  const atRoomTemperature = () => {
    world.reachRoomTemperature();
    again();
  };
  return {
    assess: () => {
      const { PE: pe, ...readings } = row;
      return assessInsulation({
        occasion: 'after-trip',
        readings,
        pe,
        testVoltage: volts(world.instruments.insulation.volts, 1),
        ratedVoltage: volts(400, 1),
        windingTemperature: temperatureOf(world),
        ambient: missing,
        humidity: missing,
        machineClass: 'random-wound',
        correction: 'halving',
        testMinutes: { kind: 'value', value: 1, unit: 'min' },
        instrument: testerOf(world),
      });
    },
    improve: onceEach({ 'let-cool': atRoomTemperature, 'let-warm': atRoomTemperature, 'repeat-more-exactly': again }),
  };
}

export function measureIsolation(
  world: World,
  suspectedAnyway: boolean,
): Measuring<ReturnType<typeof assessIsolation>> {
  let rows: Pick<IsolationInput, 'joined' | 'cable' | 'bonded' | 'motor'> = { joined: joinedRow(world) };
  let cableEndsChecked = false;
  const again = () => {
    rows = {
      joined: joinedRow(world),
      ...(rows.cable && { cable: cableRow(world) }),
      ...(rows.bonded && { bonded: bondedRow(world) }),
      ...(rows.motor && { motor: motorRow(world) }),
    };
  };
  const atRoomTemperature = () => {
    world.reachRoomTemperature();
    again();
  };
  return {
    assess: () =>
      assessIsolation({
        ...rows,
        cableEndsChecked,
        suspectedAnyway,
        testVoltage: volts(world.instruments.insulation.volts, 1),
        windingTemperature: temperatureOf(world),
        correction: 'halving',
        instrument: testerOf(world),
      }),
    improve: onceEach({
      'repeat-joined': atRoomTemperature,
      'let-motor-cool': atRoomTemperature,
      'let-motor-warm': atRoomTemperature,
      'test-cable-alone': () => {
        rows.cable = cableRow(world);
      },
      'take-bonded-row': () => {
        rows.bonded = bondedRow(world);
      },
      'check-ends-free': () => {
        cableEndsChecked = true;
        rows.cable = cableRow(world);
      },
      'complete-cable': again,
      'test-motor-alone': () => {
        rows.motor = motorRow(world);
      },
      'complete-motor': atRoomTemperature,
      're-measure-contradiction': () => {
        world.dryConnectors();
        again();
      },
    }),
  };
}

export function measureWinding(world: World, at: 'cable.drive' | 'motor'): Measuring<ReturnType<typeof assessWinding>> {
  let mode: 'ohms' | 'milliohms' = 'ohms';
  let readings = windingRow(world, at, mode);
  const withFourLeads = () => {
    mode = 'milliohms';
    readings = windingRow(world, at, mode);
  };
  return {
    assess: () =>
      assessWinding({
        readings,
        instrument: accuracy(world.instruments[mode]),
        leads: mode === 'milliohms' ? 'four' : 'zeroed',
      }),
    improve: onceEach({ 'use-milliohm-meter': withFourLeads, 'use-four-leads': withFourLeads }),
  };
}
