import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { exportVisit } from '../../../../src/visit/record/export-visit.ts';
import { visitJsonSchema } from '../../../../src/visit/record/json-schema.ts';
import { mergedPhotographs } from '../../../../src/visit/record/photograph.ts';
import { overBudget } from '../../../../src/visit/record/photograph-problem.ts';
import { readVisit, readVisitText } from '../../../../src/visit/record/read-visit.ts';
import {
  endOfImage,
  exif,
  jfif,
  jpegOf,
  markersOf,
  picture,
  plainJpegOf,
  startOfImage,
} from '../../../support/jpegs.ts';
import { photograph } from '../../../support/photographs.ts';
import { runs } from '../../../support/runs.ts';
import { at, typicalVisit } from './support/typical-visit.ts';

const visit = typicalVisit();
const fits = new Ajv2020({ strict: true, validateFormats: false }).compile(visitJsonSchema());

const one = photograph('1', { caption: 'Core W, chafed at the gland' });
const two = photograph('22', { step: 'bridge', at: at(2), changedAt: at(2) });

describe('in the file of a visit', () => {
  const { text } = exportVisit(visit, [one, two]);
  const written = () => JSON.parse(text);
  const read = (data: unknown) => readVisitText(JSON.stringify(data));

  test('photographs are written and read back completely', () => {
    expect(readVisitText(text)).toEqual({ ok: true, value: { visit, photographs: [one, two] } });
    expect(fits(written())).toBe(true);
  });

  test('without photographs the file is that of an older edition', () => {
    expect(readVisit(JSON.parse(exportVisit(visit).text)).ok).toBe(true);
    expect(exportVisit(visit, []).text).toBe(exportVisit(visit).text);
  });

  test('EXIF in a file from elsewhere is not taken', () => {
    const data = written();
    data.photographs[0].jpeg = Buffer.from(jpegOf(startOfImage, jfif, exif, picture, endOfImage)).toString('base64');
    const result = read(data);
    expect(result.ok && markersOf(result.value.photographs[0]?.jpeg ?? new Uint8Array())).not.toContain(0xe1);
    expect(result.ok && markersOf(result.value.photographs[0]?.jpeg ?? new Uint8Array())).toContain(0xe0);
  });

  test.each([
    ['a picture cut off', 'photographs.0.jpeg', { jpeg: Buffer.from(one.jpeg.subarray(0, 60)).toString('base64') }],
    ['another format', 'photographs.0.jpeg', { jpeg: Buffer.from('<svg onload="alert(1)">').toString('base64') }],
    ['no base64', 'photographs.0.jpeg', { jpeg: 'data:image/svg+xml,' }],
    ['too large', 'photographs.0.jpeg', { jpeg: 'A'.repeat(limitValue('photograph-file') * 2) }],
    ['a step that the guide does not have', 'photographs.0.step', { step: 'swap' }],
    ['an id that another one has', 'photographs.1.id', { id: two.id }],
    ['an unknown entry', 'photographs.0.place', { place: 'x' }],
    ['a caption that is no text', 'photographs.0.caption', { caption: 7 }],
    ['a time without offset', 'photographs.0.at', { at: '2026-03-03T05:58:12' }],
  ])('%s: nothing of the file is taken', (_what, where, change) => {
    const data = written();
    Object.assign(data.photographs[0], change);
    expect(read(data)).toMatchObject({ ok: false, problem: { kind: 'does-not-fit', where } });
  });

  test('more than a visit may hold', () => {
    const many = Array.from({ length: limitValue('photographs-number') + 1 }, (_, index) =>
      photograph(`number-${index}`),
    );
    expect(readVisitText(exportVisit(visit, many).text)).toMatchObject({
      ok: false,
      problem: { where: 'photographs' },
    });
  });

  test('a full visit is no larger than a file may be', () => {
    const count = limitValue('photographs-visit') / limitValue('photograph-file');
    const size = limitValue('photograph-file') - plainJpegOf().length;
    const full = Array.from({ length: count }, (_, index) => photograph(`full-${index}`, { jpeg: plainJpegOf(size) }));
    expect(full[0]?.jpeg.length).toBe(limitValue('photograph-file'));
    expect(overBudget(full)).toBeUndefined();
    const { text } = exportVisit(visit, full);
    expect(readVisitText(text).ok).toBe(true);
    expect(text.length + limitValue('record-file')).toBeLessThan(limitValue('visit-file'));
  });
});

describe('the budget', () => {
  const small = (count: number) => Array.from({ length: count }, (_, index) => photograph(`small-${index}`));

  test('by number', () => {
    expect(overBudget(small(limitValue('photographs-number')))).toBeUndefined();
    expect(overBudget(small(limitValue('photographs-number') + 1))).toMatchObject({ kind: 'too-many' });
  });

  test('by bytes', () => {
    const half = { jpeg: new Uint8Array(limitValue('photographs-visit') / 2) };
    const two = [photograph('a', half), photograph('b', half)];
    expect(overBudget(two)).toBeUndefined();
    expect(overBudget([...two, photograph('c', { jpeg: new Uint8Array(1) })])).toMatchObject({ kind: 'no-room' });
  });
});

describe('merging what two devices have', () => {
  const arbitrary = fc.array(
    fc.record({
      id: fc.integer({ min: 0, max: 6 }),
      minutes: fc.integer({ min: 0, max: 3 }),
      caption: fc.constantFrom('', 'a', 'b'),
    }),
    { maxLength: 8 },
  );
  const built = (list: { id: number; minutes: number; caption: string }[]) =>
    // On one device an id is there once.
    mergedPhotographs(
      [],
      list.map(({ id, minutes, caption }) => photograph(`${id}`, { at: at(id), changedAt: at(minutes), caption })),
    );

  test('keeps each photograph and each latest caption, whichever comes first', () => {
    fc.assert(
      fc.property(arbitrary, arbitrary, arbitrary, (first, second, third) => {
        const [a, b, c] = [built(first), built(second), built(third)];
        const merged = mergedPhotographs(a, b);
        expect(new Set(merged.map(({ id }) => id))).toEqual(new Set([...a, ...b].map(({ id }) => id)));
        for (const each of [...a, ...b]) {
          const kept = merged.find(({ id }) => id === each.id);
          expect(Date.parse(kept?.changedAt ?? '')).toBeGreaterThanOrEqual(Date.parse(each.changedAt));
        }
        expect(mergedPhotographs(b, a)).toEqual(merged);
        expect(mergedPhotographs(merged, a)).toEqual(merged);
        expect(mergedPhotographs(mergedPhotographs(a, b), c)).toEqual(mergedPhotographs(a, mergedPhotographs(b, c)));
      }),
      { numRuns: runs },
    );
  });

  test('the later caption wins, by the moment and not by the clock of the place', () => {
    const here = photograph('1', { caption: 'before', changedAt: '2026-03-03T08:00:00+02:00' });
    const there = photograph('1', { caption: 'after', changedAt: '2026-03-03T07:30:00+01:00' });
    expect(mergedPhotographs([here], [there])).toEqual([there]);
  });
});
