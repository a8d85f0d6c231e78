import { assessBendTest } from '../../src/calculators/bend-test/rule/assess.ts';
import type { BendInput, LoopId, Sweep } from '../../src/calculators/bend-test/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import type { Dice } from './dice.ts';
import { figure, hair, lowered, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const none: Sweep = { rest: missing, lowest: missing, highest: missing, after: missing };
const allLoops: readonly LoopId[] = ['UV', 'VW', 'WU', 'PE', 'screen', 'brake', 'sensor', 'feedback'];
const phases = ['U', 'V', 'W'] as const;

const onDisplay = (ohms: number): Reading => ({
  kind: 'value',
  value: Math.round(Math.max(0, ohms) * 100) / 100,
  unit: 'Ω',
  resolution: 0.01,
});
const open: Reading = { kind: 'over', unit: 'Ω' };

/** One movement of a loop of `ohms`, mostly quiet, sometimes near a mark or absurd. */
function sweep(dice: Dice, ohms: number, jumps: boolean): Sweep {
  const odd = (usual: Reading): Reading => (dice.chance(0.997) ? usual : reading(dice, () => ohms, 'Ω', 1));
  const rise = dice.chance(0.97) ? dice.pick([0, 0.02, 0.1, 0.25]) : dice.pick([0.28, 0.31, 0.9, 1.02]);
  const dip = dice.chance(0.98) ? dice.pick([0, 0.02, 0.1]) : dice.pick([0.29, 0.4]);
  const drift = dice.chance(0.98) ? dice.pick([0, 0.01, 0.03]) : dice.pick([0.29, 0.5]);
  return {
    rest: odd(onDisplay(ohms)),
    lowest: odd(onDisplay(ohms - dip)),
    highest: odd(jumps ? dice.pick([open, onDisplay(ohms + dice.pick([1.1, 5, 80]))]) : onDisplay(ohms + rise)),
    after: odd(onDisplay(ohms + drift)),
  };
}

const withCore: Record<string, readonly LoopId[]> = {
  U: ['UV', 'WU', 'PE', 'screen'],
  V: ['UV', 'VW'],
  W: ['VW', 'WU'],
  PE: ['PE'],
  brake: ['brake'],
  feedback: ['feedback'],
  tips: ['VW'],
};

function rows(dice: Dice, used: readonly LoopId[], ohms: number, bad: readonly LoopId[]): Record<LoopId, Sweep> {
  return Object.fromEntries(
    allLoops.map((id) => [id, used.includes(id) ? sweep(dice, ohms, bad.includes(id)) : none]),
  ) as Record<LoopId, Sweep>;
}

function position(dice: Dice, usual: number): BendInput['positions'][number] {
  const one = () => reading(dice, () => usual * dice.pick([1, 1, 1.3, 0.8]), 'Ω', 0.004);
  return { U: one(), V: one(), W: one() };
}

const leaky = (dice: Dice) => dice.pick([1e3, 9e5, 1.2e6, 5e7, 9.9e7]);

export const bendTest: Subject<BendInput> = {
  name: 'bend test',
  make: (dice) => {
    const ohms = dice.pick([0.12, 0.4, 1.6, 6]);
    const screen = dice.chance(0.98) ? dice.pick(['fitted', 'none'] as const) : 'not-stated';
    const idle = dice.chance(0.98) ? dice.pick(['both', 'brake', 'sensor', 'none'] as const) : 'not-stated';
    const used = allLoops.filter((id) => {
      if (dice.chance(0.003)) return false;
      if (id === 'screen') return screen === 'fitted';
      if (id === 'brake' || id === 'sensor') return idle === id || idle === 'both';
      return id !== 'feedback' || dice.chance(0.5);
    });
    const bad = dice.chance(0.3) ? (withCore[dice.pick(Object.keys(withCore))] ?? []) : [];
    const second = bad.length > 0 && dice.chance(0.6);
    const sound = dice.pick([2e8, 1.8e9, 1.2e8]);
    const places = dice.chance(0.9) ? dice.pick([3, 4, 5]) : dice.below(3);
    const leaks = dice.chance(0.15) ? dice.below(places + 1) : -1;
    const again = rows(dice, second ? allLoops.slice(0, 3).concat(bad) : [], ohms, bad);
    return {
      end: dice.chance(0.97) ? 'off' : dice.pick(['on', 'not-stated'] as const),
      meter: dice.chance(0.96) ? 'hold' : dice.pick(['watched', 'tester', 'not-stated'] as const),
      moved: dice.chance(0.95) ? 'twice' : dice.pick(['once', 'part', 'not-stated'] as const),
      loops: rows(dice, used, ohms, bad),
      screen,
      idle,
      again,
      movedAgain: second ? dice.pick(['cable', 'half', 'mated', 'all', 'not-stated'] as const) : 'not-stated',
      whileOn: dice.chance(0.97) ? 'at-rest' : dice.pick(['moved', 'not-stated'] as const),
      testVoltage: dice.chance(0.97)
        ? { kind: 'value', value: dice.pick([500, 500, 1000]), unit: 'V', resolution: 1 }
        : reading(dice, () => dice.pick([50, 250, 499]), 'V', 0.3),
      positions: Array.from({ length: 5 }, (_, place) =>
        place < places ? position(dice, place === leaks ? leaky(dice) : sound) : { U: missing, V: missing, W: missing },
      ),
      badAgain: dice.chance(0.05) ? position(dice, leaky(dice)) : { U: missing, V: missing, W: missing },
      metres: dice.chance(0.3) ? reading(dice, () => dice.pick([5, 20, 60]), 'm') : missing,
      ...(dice.chance(0.3) && { squareMillimetres: dice.pick([1, 1.5, 2.5]) }),
    };
  },
  verdict: (input) => assessBendTest(input).verdict,
  // Figures typed once more on purpose: 0.3 Ω of noise, three positions of 100 MΩ, 500 V, 30 Ω at rest.
  mayGo: (input) => {
    const { end, meter, moved, screen, idle, whileOn, testVoltage, positions, loops, again } = input;
    if (end !== 'off' || meter !== 'hold' || moved !== 'twice' || whileOn !== 'at-rest') return false;
    if (!(figure(testVoltage) >= 500)) return false;
    const needed: LoopId[] = ['UV', 'VW', 'WU', 'PE'];
    if (screen === 'fitted') needed.push('screen');
    if (idle === 'brake' || idle === 'both') needed.push('brake');
    if (idle === 'sensor' || idle === 'both') needed.push('sensor');
    const typed = (rows: Record<LoopId, Sweep>) =>
      allLoops.filter((id) => Object.values(rows[id]).some(({ kind }) => kind !== 'missing'));
    const quiet = (row: Sweep, most: number) => {
      const four = [row.rest, row.lowest, row.highest, row.after].map((one) => span(one));
      if (four.some((one) => one === undefined)) return false;
      const [rest, lowest, highest, after] = four as { lo: number; hi: number }[];
      if (!rest || !lowest || !highest || !after) return false;
      const bottom = Math.min(rest.lo, after.lo);
      const top = Math.max(rest.hi, after.hi);
      return highest.hi - bottom <= 0.3 * hair && top - lowest.lo <= 0.3 * hair && top <= most;
    };
    const whole = positions.filter((row) => phases.every((core) => row[core].kind !== 'missing'));
    const isHigh = (one: Reading) => one.kind === 'missing' || (span(one)?.lo ?? 0) >= 1e8 / hair;
    return (
      [...needed, ...typed(loops)].every((id) => quiet(loops[id], 30)) &&
      typed(again).every((id) => quiet(again[id], Number.POSITIVE_INFINITY)) &&
      whole.length >= 3 &&
      positions.every((row) => phases.every((core) => isHigh(row[core])))
    );
  },
  lacking: (input, dice) => {
    const loop = dice.pick(['UV', 'VW', 'WU', 'PE'] as const);
    const part = dice.pick(['rest', 'lowest', 'highest', 'after'] as const);
    return dice.pick([
      having(input, 'end', dice.pick(['on', 'not-stated'] as const)),
      having(input, 'meter', dice.pick(['watched', 'tester', 'not-stated'] as const)),
      having(input, 'moved', dice.pick(['once', 'part', 'not-stated'] as const)),
      having(input, 'whileOn', dice.pick(['moved', 'not-stated'] as const)),
      having(input, 'testVoltage', missing),
      having(input, 'positions', input.positions.slice(0, 2)),
      having(input, 'loops', { ...input.loops, [loop]: { ...input.loops[loop], [part]: missing } }),
      having(input, 'loops', { ...input.loops, [loop]: none }),
    ]);
  },
  worse: (input, dice) => {
    if (dice.chance(0.4)) {
      const place = dice.below(5);
      const core = dice.pick(phases);
      return having(
        input,
        'positions',
        input.positions.map((row, index) =>
          index === place ? { ...row, [core]: lowered(row[core], dice.pick([1.01, 1.5, 100, 1e6])) } : row,
        ),
      );
    }
    const rows = dice.chance(0.8) ? 'loops' : 'again';
    const loop = dice.pick(allLoops);
    const row = input[rows][loop];
    const { rest, lowest, highest, after } = row;
    if ([rest, lowest, highest, after].some((one) => one.kind !== 'value')) return undefined;
    // The readings at rest are conditions of the evidence. What was held is worse further away from them.
    if (dice.chance(0.3)) {
      if (figure(lowest) > Math.min(figure(rest), figure(after))) return undefined;
      return having(input, rows, {
        ...input[rows],
        [loop]: { ...row, lowest: lowered(lowest, dice.pick([1.1, 2, 9])) },
      });
    }
    if (figure(highest) < Math.max(figure(rest), figure(after)) || highest.kind !== 'value') return undefined;
    const higher = dice.chance(0.3) ? open : onDisplay(highest.value + dice.pick([0.05, 0.3, 1.2, 50]));
    return highest.value < 1e6 && highest.resolution === 0.01
      ? having(input, rows, { ...input[rows], [loop]: { ...row, highest: higher } })
      : undefined;
  },
};
