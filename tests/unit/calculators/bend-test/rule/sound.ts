import { assessBendTest } from '../../../../../src/calculators/bend-test/rule/assess.ts';
import {
  type BendInput,
  type LoopId,
  loopIds,
  type Sweep,
} from '../../../../../src/calculators/bend-test/rule/input.ts';
import { missing, ohms, overOhms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';

/** A display of two places, or OL. */
const shown = (one: number | 'OL' | undefined): Reading => {
  if (one === undefined) return missing;
  return one === 'OL' ? overOhms() : ohms(one, 0.01);
};

/** At rest, lowest, highest, at rest again, in Ω. */
export const moved = (
  rest?: number | 'OL',
  lowest?: number | 'OL',
  highest?: number | 'OL',
  after?: number | 'OL',
): Sweep => ({ rest: shown(rest), lowest: shown(lowest), highest: shown(highest), after: shown(after) });

export const quiet = moved(0.42, 0.4, 0.47, 0.43);
export const opens = moved(0.42, 0.4, 'OL', 0.43);
const blank = moved();

export const loops = (change: Partial<Record<LoopId, Sweep>>, otherwise: Sweep = blank): Record<LoopId, Sweep> =>
  ({ ...Object.fromEntries(loopIds.map((id) => [id, otherwise])), ...change }) as Record<LoopId, Sweep>;

/** All of a cable with screen, brake and sensor, the feedback cable too. */
export const allQuiet = loops({}, quiet);

export const phasesOf = (U: number, V = U, W = U) => ({
  U: ohms(U, U / 100),
  V: ohms(V, V / 100),
  W: ohms(W, W / 100),
});
const notRead = { U: missing, V: missing, W: missing };
export const good = phasesOf(1.8e9);

/** A cable that stays quiet and holds 500 V in three positions. */
export const sound: BendInput = {
  end: 'off',
  meter: 'hold',
  moved: 'twice',
  loops: allQuiet,
  screen: 'fitted',
  idle: 'both',
  again: loops({}),
  movedAgain: 'not-stated',
  whileOn: 'at-rest',
  testVoltage: volts(500),
  positions: [good, good, good, notRead, notRead],
  badAgain: notRead,
  metres: missing,
};

export type Change = Partial<BendInput>;
export const assess = (change: Change = {}) => assessBendTest({ ...sound, ...change });

/** The first movement with these loops changed. */
export const first = (change: Partial<Record<LoopId, Sweep>>): Change => ({ loops: { ...allQuiet, ...change } });
/** Positions from the first on. */
export const at = (...rows: BendInput['positions']): Change => ({
  positions: [...rows, ...Array.from({ length: 5 - rows.length }, () => notRead)],
});
