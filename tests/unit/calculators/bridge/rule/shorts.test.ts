import { describe, expect, test } from 'vitest';
import { assessBridge } from '../../../../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../../../../src/calculators/bridge/rule/suspect-positions.ts';
import { type Phases, phases } from '../../../../../src/kernel/electrics/phases.ts';
import { ohms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';

// Source: Kirchhoff's laws, solved here for the whole stage. Six leaks, the bleed resistor, and any of the switches shorted.

const nodes = ['plus', 'minus', ...phases];
const leak = { plus: 450e3, minus: 45e3 };
const short = 3;
const positions = (['plus', 'minus'] as const).flatMap((rail) => phases.map((phase) => ({ rail, phase })));

interface Path {
  from: string;
  to: string;
  ohms: number;
}

/** What a meter shows between two nodes: the voltage at one ampere, with `to` as ground. */
function between(from: string, to: string, paths: readonly Path[]): number {
  const free = nodes.filter((node) => node !== to);
  const rows = free.map((node) => [
    ...free.map((other) =>
      paths.reduce((sum, path) => {
        const ends = [path.from, path.to];
        if (!ends.includes(node) || !ends.includes(other)) return sum;
        return node === other ? sum + 1 / path.ohms : sum - 1 / path.ohms;
      }, 0),
    ),
    node === from ? 1 : 0,
  ]);
  const size = free.length;
  const at = (row: number, column: number) => rows[row]?.[column] ?? 0;
  for (let pivot = 0; pivot < size; pivot++) {
    for (let row = 0; row < size; row++) {
      if (row === pivot) continue;
      const factor = at(row, pivot) / at(pivot, pivot);
      rows[row] = (rows[row] ?? []).map((value, column) => value - factor * at(pivot, column));
    }
  }
  const row = free.indexOf(from);
  return at(row, size) / at(row, row);
}

function read(shorted: readonly string[], bleed: number) {
  const paths: Path[] = positions.map(({ rail, phase }) => ({
    from: rail,
    to: phase,
    ohms: shorted.includes(rail + phase) ? short : leak[rail],
  }));
  paths.push({ from: 'plus', to: 'minus', ohms: bleed });
  const three = (rail: string) =>
    Object.fromEntries(phases.map((phase) => [phase, ohms(between(rail, phase, paths))])) as unknown as Phases<
      ReturnType<typeof ohms>
    >;
  const { U: plusU } = three('plus');
  const { U: minusU } = three('minus');
  // Without diodes a circuit reads the same both ways.
  const exchanged = { plusExchanged: plusU, minusExchanged: minusU };
  return {
    alone: assessBridge({ ...stage, dcPlus: three('plus'), dcMinus: three('minus') }),
    again: assessBridge({
      ...stage,
      ...exchanged,
      dcPlus: three('plus'),
      dcMinus: three('minus'),
      plusAgain: plusU,
      minusAgain: minusU,
      worstAgain: worst(shorted, { plus: three('plus'), minus: three('minus') }),
      alsoOnBus: 'nothing',
    }),
  };
}

const stage = { busVoltage: volts(0.02), motorLeads: 'off' as const };

/** A person reads the first of the shorts once more. */
function worst(shorted: readonly string[], three: Record<'plus' | 'minus', Phases<Reading>>): Reading {
  const [at] = positions.filter(({ rail, phase }) => shorted.includes(rail + phase));
  return at === undefined ? { kind: 'missing' } : three[at.rail][at.phase];
}

const ids = positions.map(({ rail, phase }) => rail + phase);
const subsets = Array.from({ length: 2 ** ids.length }, (_, bits) => ids.filter((_id, index) => bits & (1 << index)));
/** If both switches of a leg are shorted, so is the bus, and every terminal joined to it reads a short. */
const throughLeg = (shorted: readonly string[]) =>
  phases.some((phase) => ['plus', 'minus'].every((rail) => shorted.includes(rail + phase)));

describe.each([22e3, 47e3, 470e3])('a bleed resistor of %i Ω', (bleed) => {
  test.each(subsets.filter((some) => some.length > 0 && !throughLeg(some)).map((some) => [some.join(' ')]))(
    'shorts at %s: they are named, and no sound transistor is',
    (text) => {
      const shorted = text.split(' ');
      const { alone, again } = read(shorted, bleed);
      // Three alike shorts of a rail are three diodes until the leads were exchanged; then U is proven.
      const alike = (rail: string) => phases.every((phase) => shorted.includes(rail + phase));
      const named = (asked: boolean) => shorted.filter((id) => !alike(id.slice(0, -1)) || (asked && id.endsWith('U')));
      expect(suspectPositions(alone.findings)).toEqual(named(false));
      expect(alone.verdict).toBe(named(false).length > 0 ? 'no-go' : 'undecided');
      expect(suspectPositions(again.findings)).toEqual(named(true));
      expect(again.drive).toBe('convicted');
    },
  );
});

test('a sound stage passes', () => {
  const { alone, again } = read([], 47e3);
  expect([alone.verdict, again.verdict, again.drive]).toEqual(['go', 'go', 'sound']);
});
