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

/** How a rail was read besides: U once more at the end, and U with the leads exchanged. */
export interface More {
  again?: Reading | undefined;
  exchanged?: Reading | undefined;
  sister?: BridgeInput['sister'] | undefined;
}

const isThere = (one: Reading | undefined): one is Reading => one !== undefined && one.kind !== 'missing';

type Shows = 'balanced' | 'open' | 'as sister' | 'neither';

/**
 * A short is a kilohm or less; open counts from the usual size of the rail, and so does a pass without more than the
 * three. U read again counts in its place, unless U was a few ohms at first. Limits typed once more on purpose.
 */
export function railShows(
  three: Phases<Reading>,
  by: Instrument,
  tolerance: number,
  usualFrom: number,
  { again, exchanged, sister }: More = {},
): Shows {
  const replaced = isThere(again) && isThere(three.U);
  if (replaced && (span(three.U, by)?.lo ?? 0) <= 10 && three.U.kind !== 'over') return 'neither';
  const list = phases.map((phase) => (phase === 'U' && replaced ? (again as Reading) : three[phase]));
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
  const wide = (1 + tolerance / 100) * hair;
  if (!(low > 1000)) return 'neither';
  // Odd by its model: a sound drive shows the same, and U was read twice.
  if (!(high <= low * wide)) return sister === 'alike' && replaced ? 'as sister' : 'neither';
  if (low >= 1e4 || sister === 'alike') return 'balanced';
  const other = isThere(exchanged) ? span(exchanged, by) : undefined;
  return other !== undefined && other.hi <= low * wide ? 'balanced' : 'neither';
}

/** What is read once more, mostly of the same size; sometimes nothing of it fits. */
function more(dice: Dice): Partial<BridgeInput> {
  const near = (usual: number) => reading(dice, () => usual * dice.pick([1, 1, 1, 1.02, 1.15, 0.4, 1e-5]), 'Ω', 0.02);
  return {
    ...(dice.chance(0.5) && { plusAgain: near(480e3) }),
    ...(dice.chance(0.5) && { minusAgain: near(46e3) }),
    ...(dice.chance(0.3) && { plusExchanged: near(480e3) }),
    ...(dice.chance(0.3) && { minusExchanged: near(46e3) }),
    ...(dice.chance(0.3) && { worstAgain: near(dice.pick([480e3, 46e3])) }),
    ...(dice.chance(0.3) && { dcBus: near(470e3) }),
    ...(dice.chance(0.5) && { sister: dice.pick(['alike', 'differs', 'not-compared'] as const) }),
    ...(dice.chance(0.5) && { alsoOnBus: dice.pick(['nothing', 'something', 'not-stated'] as const) }),
  };
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
    ...(dice.chance(0.4) && more(dice)),
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
    ...rest
  }) => {
    if (rest.sister === 'differs') return false;
    const isNoShort = (one: Reading | undefined) =>
      !isThere(one) || one.kind === 'over' || (span(one, by)?.lo ?? 0) > 1000;
    if (!isNoShort(rest.worstAgain) || !isNoShort(rest.dcBus)) return false;
    if (!busIsDead(busVoltage) || motorLeads !== 'off' || !(tolerancePercent >= 0 && tolerancePercent <= 100))
      return false;
    const { sister, plusAgain, minusAgain, plusExchanged, minusExchanged } = rest;
    const plus = { again: plusAgain, exchanged: plusExchanged, sister };
    const minus = { again: minusAgain, exchanged: minusExchanged, sister };
    const shows = [
      railShows(dcPlus, by, tolerancePercent, 1e5, plus),
      railShows(dcMinus, by, tolerancePercent, 1e4, minus),
    ];
    if (shows.includes('neither')) return false;
    return (
      shows.includes('balanced') ||
      shows.includes('as sister') ||
      (span(tipsTogether)?.hi ?? Number.POSITIVE_INFINITY) <= 2
    );
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
    // U read again replaces its first reading, and three alike shorts are three diodes until the leads were exchanged.
    if (isThere(key === 'dcPlus' ? input.plusAgain : input.minusAgain)) return undefined;
    if (phases.some((phase) => span(input[key][phase])?.lo === undefined || (span(input[key][phase])?.lo ?? 0) <= 1000))
      return undefined;
    return having(input, key, having(input[key], dice.pick(phases), short));
  },
};
