import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import {
  caseFaults,
  decodeCase,
  drawCase,
  encodeCase,
  faultMark,
  seeds,
  windingTemperatures,
} from '../../../../src/practice/case/case-code.ts';
import { drawMachine } from '../../../../src/practice/case/draw-machine.ts';
import { faultIds } from '../../../../src/practice/simulator/faulted-axis.ts';
import { runs } from '../../../support/runs.ts';

const keys = fc.record({
  fault: fc.constantFrom(...caseFaults),
  seed: fc.integer({ min: 0, max: seeds - 1 }),
  windingCelsius: fc.constantFrom(...windingTemperatures),
});

test('no two faults share a mark', () => {
  expect(new Set(caseFaults.map(faultMark)).size).toBe(caseFaults.length);
});

test('a code decodes to the same case', () => {
  fc.assert(
    fc.property(keys, (key) => {
      expect(decodeCase(encodeCase(key))).toEqual(key);
    }),
    { numRuns: runs },
  );
});

describe('a code is read in any usual spelling', () => {
  const key = { fault: 'short-lower-V', seed: 1, windingCelsius: 20 };
  const code = encodeCase({ ...key, windingCelsius: windingTemperatures[6] as number });
  const same = decodeCase(code);

  test.each([
    ['small letters', code.toLowerCase()],
    ['without strokes', code.replaceAll('-', '')],
    ['blanks around and between', ` ${code.replaceAll('-', ' ')} `],
    ['O for 0, I and L for 1', code.replaceAll('0', 'O').replace('1', 'l')],
  ])('%s', (_, typed) => {
    expect(same).toBeDefined();
    expect(decodeCase(typed)).toEqual(same);
  });
});

test.each(['', 'hello', '000-000-000', 'AAA-AAA-AAAA', '🙂🙂🙂', 'UUU-UUU-UUU'])('%j is no code', (typed) => {
  expect(decodeCase(typed)).toBeUndefined();
});

test('a code with one wrong character is invalid', () => {
  const alphabet = [...'0123456789ABCDEFGHJKMNPQRSTVWXYZ'];
  const code = encodeCase(drawCase(seeded(12))).replaceAll('-', '');
  const wrong = [...code].flatMap((sign, place) =>
    alphabet.filter((other) => other !== sign).map((other) => code.slice(0, place) + other + code.slice(place + 1)),
  );
  expect(wrong.filter((typed) => decodeCase(typed) !== undefined)).toEqual([]);
});

test('draws reach every fault, and two draws differ', () => {
  const random = seeded(3);
  const drawn = Array.from({ length: 3000 }, () => drawCase(random));
  expect(new Set(drawn.map(({ fault }) => fault)).size).toBe(faultIds.length);
  expect(new Set(drawn.map(encodeCase)).size).toBeGreaterThan(2990);
});

test('a clear case has one bad part that the usual measurements name', () => {
  const random = seeded(4);
  const drawn = Array.from({ length: 300 }, () => drawMachine(drawCase(random, 'clear').fault, 1).axis);
  expect(drawn.filter(({ bad, hidden }) => bad.length !== 1 || hidden.length > 0)).toEqual([]);
});

test('a case of the field has a cause of the field, and its code opens the same axis', () => {
  const random = seeded(5);
  const keys = Array.from({ length: 60 }, () => drawCase(random, 'field'));
  const codes = keys.map((key) => decodeCase(encodeCase(key)));
  expect(codes).toEqual(keys);
  const axes = keys.map(({ fault, seed }) => drawMachine(fault, seed).axis);
  expect(axes.some(({ bad }) => bad.length === 0)).toBe(true);
  expect(axes.some(({ parameters }) => parameters.idleCores.length > 0)).toBe(true);
});
