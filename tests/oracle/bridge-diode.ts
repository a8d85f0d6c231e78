import { assessBridgeDiode, type BridgeDiodeInput } from '../../src/calculators/bridge-diode/rule/assess.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { bus, rail, railShows } from './bridge.ts';
import type { Dice } from './dice.ts';
import { busIsDead, figure, hair, instrument, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const phases = ['U', 'V', 'W'] as const;
const sides = ['plus', 'minus'] as const;
type Side = BridgeDiodeInput['plus'];

function forward(dice: Dice): Phases<Reading> {
  const size = dice.chance(0.9) ? dice.between(0.31, 0.62) : dice.pick([0.05, 0.1, 0.11, 0.22, 0.8, 1.48, 1.52]);
  const off = dice.pick([0, 0.01, 0.03, 0.05, 0.051, 0.2]);
  const one = () => reading(dice, () => size + dice.between(0, off), 'V', 0.01, 3);
  return { U: one(), V: one(), W: one() };
}

function reverse(dice: Dice): Phases<Reading> {
  const open: Reading = dice.pick([
    { kind: 'over', unit: 'V' },
    { kind: 'over', unit: 'V', atLeast: 2 },
  ]);
  const size = dice.chance(0.85) ? 1.7 : dice.pick([0.4, 1.2, 1.5, 1.49]);
  const off = dice.pick([0, 0.05, 0.15, 0.17, 0.3]);
  const allOpen = dice.chance(0.85);
  const one = () =>
    allOpen && dice.chance(0.99) ? open : reading(dice, () => size + dice.between(0, off), 'V', 0.02, 3);
  return { U: one(), V: one(), W: one() };
}

/**
 * Drops above 0.1 V, blocking from 1.5 V, drops within 50 mV of each other, usual from 0.3 to 0.7 V: repeated here on
 * purpose.
 */
function sideIsSound({ forward: to, reverse: back }: Side, by: Instrument): boolean {
  const drops = phases.map((phase) => span(to[phase], by));
  const blocked = phases.map((phase) => {
    const one = back[phase];
    return one.kind === 'over' && one.atLeast === undefined
      ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY }
      : span(one, by);
  });
  if (!drops.every((one) => one !== undefined && one.lo > 0.1 && one.hi < 1.5)) return false;
  if (!blocked.every((one) => one !== undefined && one.lo >= 1.5)) return false;
  const [low, high] = [Math.min(...drops.map((one) => one?.lo ?? 0)), Math.max(...drops.map((one) => one?.hi ?? 9))];
  if (!(high - low <= 0.05 * hair)) return false;
  const allOpen = blocked.every((one) => one?.hi === Number.POSITIVE_INFINITY);
  const alike =
    Math.max(...blocked.map((one) => one?.hi ?? 9)) <= Math.min(...blocked.map((one) => one?.lo ?? 0)) * 1.1 * hair;
  return allOpen || (alike && low >= 0.3 && high <= 0.7);
}

export const bridgeDiode: Subject<BridgeDiodeInput> = {
  name: 'bridge, diode test',
  signed: ['busVoltage', 'plus', 'minus'],
  make: (dice) => ({
    busVoltage: bus(dice),
    motorLeads: dice.chance(0.95) ? 'off' : dice.pick(['connected', 'not-stated'] as const),
    steadiness: dice.chance(0.95) ? 'steady' : dice.pick(['drifting', 'not-stated'] as const),
    plus: { forward: forward(dice), reverse: reverse(dice) },
    minus: { forward: forward(dice), reverse: reverse(dice) },
    ...(dice.chance(0.3) && { instrument: instrument(dice, [1.999, 3]) }),
    ...(dice.chance(0.4) && { resistance: { dcPlus: rail(dice, 480e3), dcMinus: rail(dice, 46e3) } }),
  }),
  verdict: (input) => assessBridgeDiode(input).verdict,
  mayGo: ({ busVoltage, motorLeads, steadiness, plus, minus, instrument: by = {}, resistance }) => {
    if (!busIsDead(busVoltage) || motorLeads !== 'off' || steadiness !== 'steady') return false;
    const all = [plus, minus].flatMap((side) => phases.flatMap((phase) => [side.forward[phase], side.reverse[phase]]));
    if (all.some((one) => figure(one) < 0)) return false;
    if (!sideIsSound(plus, by) || !sideIsSound(minus, by)) return false;
    if (resistance === undefined) return true;
    return (
      railShows(resistance.dcPlus, {}, 10, 1e5) !== 'neither' &&
      railShows(resistance.dcMinus, {}, 10, 1e4) !== 'neither'
    );
  },
  lacking: (input, dice) => {
    const key = dice.pick(['busVoltage', 'motorLeads', 'steadiness', 'plus', 'minus'] as const);
    if (key === 'busVoltage') return having(input, key, missing);
    if (key === 'motorLeads' || key === 'steadiness') return having(input, key, 'not-stated');
    const way = dice.pick(['forward', 'reverse'] as const);
    return having(input, key, having(input[key], way, having(input[key][way], dice.pick(phases), missing)));
  },
  worse: (input, dice) => {
    // Beside resistances a new short may contradict them, which takes a no-go back.
    if (input.resistance !== undefined || input.instrument !== undefined) return undefined;
    const side = dice.pick(sides);
    const way = dice.pick(['forward', 'reverse'] as const);
    const short: Reading = { kind: 'value', value: dice.pick([0, 0.002, 0.08]), unit: 'V', resolution: 0.001 };
    return having(input, side, having(input[side], way, having(input[side][way], dice.pick(phases), short)));
  },
  plain: ({ resistance: _optional, ...rest }) => rest,
};
