import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { readVisit, readVisitFile, readVisitText } from '../../../../src/visit/record/read-visit.ts';
import { arbitraryVisit, wholeVisits } from './support/arbitrary-visit.ts';
import { typicalVisit } from './support/typical-visit.ts';

const visit = typicalVisit();
const text = JSON.stringify(visit);

/** The typical visit with one place changed by hand. */
function edited(place: string, value: unknown): unknown {
  const copy = JSON.parse(text);
  const keys = place.split('.');
  const last = keys.pop() ?? '';
  const target = keys.reduce((at, key) => at[key], copy);
  if (value === undefined) delete target[last];
  else target[last] = value;
  return copy;
}

const kindOf = (data: unknown) => {
  const read = readVisit(data);
  return read.ok ? 'read' : read.problem.kind;
};

test('a visit is read as it was written', () => {
  expect(readVisitText(text)).toEqual({ ok: true, value: { visit, photographs: [] } });
});

test('any record that fits is unchanged after writing and reading its text', () => {
  fc.assert(
    fc.property(arbitraryVisit, (one) => {
      expect(readVisitText(JSON.stringify(one))).toEqual({ ok: true, value: { visit: one, photographs: [] } });
    }),
    { numRuns: wholeVisits },
  );
});

describe('a record edited by hand is accepted if it fits', () => {
  test.each([
    ['a reading corrected', 'steps.bridge.form.plusU', '483k'],
    ['a reading that nobody can read', 'steps.bridge.form.plusU', 'about half'],
    ['a field that this edition does not know', 'steps.bridge.form.somethingElse', 'x'],
    ['a snapshot taken out', 'steps.bridge.snapshot', undefined],
    ['a step taken out', 'steps.inspect', undefined],
    ['the decision taken out', 'decision', undefined],
    ['a time long past, on another clock', 'changedAt', '1999-12-31T23:59:59-05:00'],
  ])('%s', (_what, place, value) => {
    expect(kindOf(edited(place, value))).toBe('read');
  });

  test('a byte order mark and blank lines of an editor do not matter', () => {
    expect(readVisitText(`\uFEFF\n${text}\n\n`).ok).toBe(true);
  });
});

describe('what does not fit is refused with its place', () => {
  test.each([
    ['machine', 7],
    ['machine', 'x'.repeat(limitValue('record-text') + 1)],
    ['notes', 'x'.repeat(limitValue('record-notes') + 1)],
    ['person', undefined],
    ['id', '../../etc'],
    ['revision', -1],
    ['seq', 1.5],
    ['seq', Number.MAX_SAFE_INTEGER],
    ['createdAt', 'yesterday'],
    ['createdAt', '2026-03-03T05:58:12'],
    ['conditions.airTemperature', null],
    ['servedAxes', Array(limitValue('record-items') + 1).fill({ drive: '', axes: [] })],
    ['steps.bridge.seq', '9'],
    ['steps.bridge.form', ['plusU']],
    ['steps.bridge.form.plusU', 482000],
    ['steps.bridge.snapshot.verdict', 'probably'],
    ['steps.bridge.snapshot.sentences', 'Go.'],
    ['decision.kind', 'swap'],
  ])('%s: %j', (place, value) => {
    expect(readVisit(edited(place, value))).toMatchObject({
      ok: false,
      problem: { kind: 'does-not-fit', where: place },
    });
  });

  test.each([
    ['extra', 'an unknown entry'],
    ['steps.bridge.extra', 'an unknown entry in a step'],
    ['steps.swap-drives', 'a step that the guide does not have'],
    ['steps.bridge.form.plus U', 'a field id with a space'],
  ])('%s: %s', (place) => {
    const read = readVisit(edited(place, 'x'));
    expect(read).toMatchObject({ ok: false, problem: { kind: 'does-not-fit' } });
    expect(read.ok ? '' : read.problem.message).toContain('nothing of it was taken');
  });

  test('more fields than a form can have', () => {
    const many = Object.fromEntries(Array.from({ length: limitValue('record-items') + 1 }, (_, i) => [`f${i}`, '']));
    expect(kindOf(edited('steps.bridge.form', many))).toBe('does-not-fit');
  });

  test('the named place is shortened, since its text may be hostile', () => {
    const read = readVisit({ ...visit, ['x'.repeat(5000)]: 1 });
    expect(read.ok ? '' : read.problem.where).toHaveLength(120);
  });
});

describe('foreign, newer and unknown', () => {
  test.each([
    ['foreign', []],
    ['foreign', null],
    ['foreign', 'visit'],
    ['foreign', {}],
    ['foreign', { ...visit, format: 'something-else' }],
    ['newer', { ...visit, version: 3 }],
    ['newer', { format: visit.format, version: 99 }],
    ['unknown-version', { ...visit, version: 0 }],
    ['unknown-version', { ...visit, version: -1 }],
    ['unknown-version', { ...visit, version: 1.5 }],
    ['unknown-version', { ...visit, version: '1' }],
    ['unknown-version', { format: visit.format }],
  ])('%s: %j', (kind, data) => {
    expect(kindOf(data)).toBe(kind);
  });
});

describe('damaged texts', () => {
  test.each([
    ['empty', ''],
    ['cut off', text.slice(0, -40)],
    ['doubled', text + text],
    ['no JSON', 'Dear colleague, here is the visit'],
    ['a key that reaches the prototype', text.replace('"machine"', '"__proto__":{"seq":1},"machine"')],
    ['the same key, disguised', text.replace('"machine"', '"\\u005f_proto__":{"seq":1},"machine"')],
    ['nested past the stack', '['.repeat(500_000)],
    ['nested past the stack, closed', `${'['.repeat(500_000)}${']'.repeat(500_000)}`],
  ])('%s', (_what, damaged) => {
    expect(readVisitText(damaged)).toMatchObject({ ok: false, problem: { kind: 'damaged' } });
    expect(({} as { seq?: number }).seq).toBeUndefined();
  });

  test('a truncated text is never accepted as a visit', () => {
    for (let length = 0; length < text.length; length += 7) expect(readVisitText(text.slice(0, length)).ok).toBe(false);
  });
});

describe('files', () => {
  const file = (content: BlobPart) => new Blob([content], { type: 'application/json' });

  test('a visit', async () => {
    expect(await readVisitFile(file(text))).toEqual({ ok: true, value: { visit, photographs: [] } });
  });

  test('too large is refused before it is read', async () => {
    const huge = { size: limitValue('visit-file') + 1, arrayBuffer: () => Promise.reject(new Error('was read')) };
    expect(await readVisitFile(huge as unknown as Blob)).toMatchObject({ ok: false, problem: { kind: 'too-large' } });
  });

  test('a text as large is refused too, counted in bytes', () => {
    expect(readVisitText('Ω'.repeat(limitValue('visit-file') / 2 + 1))).toMatchObject({
      ok: false,
      problem: { kind: 'too-large' },
    });
  });

  test('a picture, which is not UTF-8', async () => {
    const read = await readVisitFile(file(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xff, 0xd8])));
    expect(read).toMatchObject({ ok: false, problem: { kind: 'damaged' } });
  });

  test('a file that disappears while it is read, such as on a removed card', async () => {
    const gone = { size: 10, arrayBuffer: () => Promise.reject(new DOMException('', 'NotReadableError')) };
    expect(await readVisitFile(gone as unknown as Blob)).toMatchObject({ ok: false, problem: { kind: 'unreadable' } });
  });
});
