import { lusolve, matrix } from 'mathjs';
import { expect, test } from 'vitest';
import { between, seeded } from '../../../../src/kernel/random.ts';
import { Equations, solveLinear } from '../../../../src/practice/simulator/linear-equations.ts';

function equationsOf(rows: number[][], right: number[]): Equations {
  const equations = new Equations(rows.length);
  rows.forEach((row, at) => {
    row.forEach((value, column) => {
      equations.add(at, column, value);
    });
    equations.add(at, rows.length, right[at] ?? 0);
  });
  return equations;
}

test('two equations by hand: x + y = 3, x − y = 1', () => {
  const rows = [
    [1, 1],
    [1, -1],
  ];
  expect([...solveLinear(equationsOf(rows, [3, 1]))]).toEqual([2, 1]);
});

test('a zero on the diagonal needs another row first', () => {
  const rows = [
    [0, 2],
    [4, 0],
  ];
  expect([...solveLinear(equationsOf(rows, [6, 8]))]).toEqual([2, 3]);
});

test('adding at ground, row or column −1, changes nothing', () => {
  const equations = equationsOf([[2]], [4]);
  equations.add(-1, 0, 9);
  equations.add(0, -1, 9);
  expect([...solveLinear(equations)]).toEqual([2]);
});

test('solving a copy leaves the original unchanged', () => {
  const equations = equationsOf([[2]], [4]);
  solveLinear(equations.copy());
  expect([...solveLinear(equations)]).toEqual([2]);
});

test('the last unknown of a floating group is zero: x − y = 3, twice', () => {
  const rows = [
    [1, -1],
    [-1, 1],
  ];
  expect([...solveLinear(equationsOf(rows, [3, -3]))]).toEqual([3, 0]);
});

test('a connection to ground counts up to a teraohm beside a tenth of an ohm', () => {
  const [wire, leak, amperes] = [10, 1e-12, 1e-9];
  const rows = [
    [wire + leak, -wire],
    [-wire, wire],
  ];
  expect([...solveLinear(equationsOf(rows, [amperes, 0]))].map(Math.round)).toEqual([1000, 1000]);
});

// Source: mathjs, a general-purpose library, solves the same random equations.
test.each([3, 10, 40])('%d unknowns as mathjs solves them', (size) => {
  const random = seeded(size);
  const rows = Array.from({ length: size }, () => Array.from({ length: size }, () => between(random, -1, 1)));
  const right = Array.from({ length: size }, () => between(random, -1, 1));
  const theirs = lusolve(matrix(rows), right).toArray() as number[][];
  solveLinear(equationsOf(rows, right)).forEach((value, at) => {
    expect(value).toBeCloseTo(theirs[at]?.[0] ?? Number.NaN, 8);
  });
});
