import { assessBridge, type BridgeInput } from '../../src/calculators/bridge/rule/assess.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import type { Dice } from './dice.ts';
import { busIsDead, hair, instrument, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const phases = ['U', 'V', 'W'] as const;

/** Three readings of one rail, near each other and near the tolerance. */
export function rail(dice: Dice, usual: number): Phases<Reading> {
  const off = dice.pick([0, 0.01, 0.05, 0.095, 0.1, 0.101, 0.3]);
  const size = dice.chance(0.85) ? usual : dice.log(0.1, 1e8);
  const open = dice.chance(0.1);
  const bound = dice.pick([undefined, 1e4, 1e5, 6e5, 4e7]);
  const one = (): Reading =>
    open && dice.chance(0.97)
      ? { kind: 'over', unit: 'Ω', ...(bound !== undefined && { atLeast: bound }) }
      : reading(dice, () => size * (1 + dice.between(0, off)), 'Ω', 0.01);
  return { U: one(), V: one(), W: one() };
}

export const bus = (dice: Dice): Reading =>
  dice.chance(0.92)
    ? { kind: 'value', value: dice.pick([0, 0.02, 0.1, -0.05]), unit: 'V', resolution: 0.01 }
    : reading(dice, () => dice.pick([0.09, 0.1, 0.11, 49, 50, 51, 325]), 'V', 0.5);

type Shows = 'balanced' | 'open' | 'neither';

/** A short is a kilohm or less; open counts from the usual size of the rail. Limits typed once more on purpose. */
export function railShows(three: Phases<Reading>, by: Instrument, tolerance: number, usualFrom: number): Shows {
  const list = phases.map((phase) => three[phase]);
  const spans = list.map((one) => span(one, by));
  if (spans.some((one) => one === undefined)) return 'neither';
  const allOver = list.every(
    (one, index) =>
      one.kind === 'over' &&
      ((one.atLeast === undefined && by.upperLimit === undefined) || (spans[index]?.lo ?? 0) >= usualFrom),
  );
  if (allOver) return 'open';
  const low = Math.min(...spans.map((one) => one?.lo ?? 0));
  const high = Math.max(...spans.map((one) => one?.hi ?? 0));
  return low > 1000 && high <= low * (1 + tolerance / 100) * hair ? 'balanced' : 'neither';
}

export const bridge: Subject<BridgeInput> = {
  name: 'bridge',
  signed: ['busVoltage'],
  make: (dice) => ({
    busVoltage: bus(dice),
    motorLeads: dice.chance(0.93) ? 'off' : dice.pick(['connected', 'not-stated'] as const),
    dcPlus: rail(dice, 480e3),
    dcMinus: rail(dice, 46e3),
    ...(dice.chance(0.5) && { tipsTogether: reading(dice, () => dice.pick([0.2, 1.9, 2, 2.1, 30]), 'Ω', 0.2) }),
    ...(dice.chance(0.1) && {
      tolerancePercent: dice.pick([5, 10, 20, 100, 101, 1e9, -1, Number.NaN, Number.POSITIVE_INFINITY]),
    }),
    ...(dice.chance(0.5) && { instrument: instrument(dice, [1e5, 6e5, 4e7]) }),
  }),
  verdict: (input) => assessBridge(input).verdict,
  mayGo: ({
    busVoltage,
    motorLeads,
    dcPlus,
    dcMinus,
    tipsTogether = missing,
    tolerancePercent = 10,
    instrument: by = {},
  }) => {
    if (!busIsDead(busVoltage) || motorLeads !== 'off' || !(tolerancePercent >= 0 && tolerancePercent <= 100))
      return false;
    const shows = [railShows(dcPlus, by, tolerancePercent, 1e5), railShows(dcMinus, by, tolerancePercent, 1e4)];
    if (shows.includes('neither')) return false;
    return shows.includes('balanced') || (span(tipsTogether)?.hi ?? Number.POSITIVE_INFINITY) <= 2;
  },
  lacking: (input, dice) => {
    const key = dice.pick(['busVoltage', 'motorLeads', 'dcPlus', 'dcMinus'] as const);
    if (key === 'busVoltage') return having(input, key, missing);
    if (key === 'motorLeads') return having(input, key, 'not-stated');
    return having(input, key, having(input[key], dice.pick(phases), missing));
  },
  worse: (input, dice) => {
    const key = dice.pick(['dcPlus', 'dcMinus'] as const);
    const short: Reading = { kind: 'value', value: dice.pick([0, 0.4, 40, 400]), unit: 'Ω', resolution: 0.1 };
    // A meter that is stated not to show such a figure contradicts it.
    if (input.instrument !== undefined) return undefined;
    return having(input, key, having(input[key], dice.pick(phases), short));
  },
};
