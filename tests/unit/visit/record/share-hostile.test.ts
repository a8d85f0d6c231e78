import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { toBase64url } from '../../../../src/kernel/link/base64url.ts';
import { pack } from '../../../../src/kernel/link/pack.ts';
import { shareDictionary } from '../../../../src/kernel/link/share-dictionary.ts';
import { readShare, shareText } from '../../../../src/visit/record/share.ts';
import { liftVisit } from '../../calculators/visits.ts';
import { must } from './support/must.ts';
import { failed, typicalVisit } from './support/typical-visit.ts';

const visit = typicalVisit();
const good = must(shareText({ kind: 'visit', visit }));

/** Any content, packed like a real share. */
const packed = (text: string) => `1.${toBase64url(pack(text, shareDictionary))}`;
const kindOf = (share: string) => {
  const read = readShare(share);
  return read.ok ? 'read' : read.problem.kind;
};

/** Fixed, independent of FIELDBOOK_RUNS. */
const fuzzed = 10_000;

describe('fuzz: each of 10,000 gives a problem with a message, or what was sent; none throws', () => {
  const text = fc.oneof(
    fc.string({ maxLength: 300 }),
    fc.string({ unit: 'binary', maxLength: 100 }),
    fc.stringMatching(/^1\.[A-Za-z0-9_-]{0,200}$/),
    fc.uint8Array({ maxLength: 300 }).map((bytes) => `1.${toBase64url(bytes)}`),
    fc.stringMatching(/^\d{1,8}\.[A-Za-z0-9_-]{1,40}$/),
  );

  test('texts and bytes at random', () => {
    fc.assert(
      fc.property(text, (share) => {
        const read = readShare(share);
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.problem.message.length).toBeGreaterThan(20);
      }),
      { numRuns: fuzzed },
    );
  });

  test('good links with places changed, taken out, doubled or put in', () => {
    const change = fc.record({
      at: fc.nat({ max: good.length - 1 }),
      take: fc.nat({ max: 40 }),
      put: fc.oneof(fc.stringMatching(/^[A-Za-z0-9_-]{0,20}$/), fc.string({ maxLength: 10 })),
    });
    const sent = readShare(good);
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        const share = changes.reduce(
          (link, { at, take, put }) => link.slice(0, at) + put + link.slice(at + take),
          good,
        );
        const read = readShare(share);
        if (read.ok) expect(read).toEqual(sent);
      }),
      { numRuns: fuzzed },
    );
  });

  test('well packed JSON of any shape', () => {
    const shape = fc.oneof(
      fc.json({ maxDepth: 4 }),
      fc.json({ maxDepth: 3 }).map((inner) => `{"visit":${inner}}`),
      fc.json({ maxDepth: 3 }).map((inner) => `{"calculator":"bridge","form":${inner},"x":1}`),
      fc.json({ maxDepth: 2 }).map((inner) => JSON.stringify({ visit: { ...visit, steps: JSON.parse(inner) } })),
    );
    fc.assert(
      fc.property(shape, (json) => {
        const read = readShare(packed(json));
        // An empty list of steps is a visit; nothing else of this fits.
        if (read.ok) expect(read.value).toMatchObject({ kind: 'visit', visit: { steps: {} } });
      }),
      { numRuns: fuzzed },
    );
  });
});

describe('hostile by hand', () => {
  const bridge = (form: unknown) => packed(JSON.stringify({ calculator: 'bridge', form }));
  const deep = (levels: number) => `${'{"visit":'.repeat(levels)}1${'}'.repeat(levels)}`;

  test.each([
    ['empty', '', 'damaged'],
    ['only the version', '1.', 'damaged'],
    ['no version', good.slice(2), 'damaged'],
    ['version 0', `0.${good.slice(2)}`, 'unknown-version'],
    ['a newer version', `2.${good.slice(2)}`, 'newer'],
    ['a version far away', `999999.${good.slice(2)}`, 'newer'],
    ['cut off', good.slice(0, 600), 'damaged'],
    ['longer than any link', `1.${'A'.repeat(limitValue('share-link'))}`, 'too-large'],
    ['a prototype key in a form', packed('{"calculator":"bridge","form":{"__proto__":{"polluted":1}}}'), 'damaged'],
    ['a prototype key at the top', packed('{"__proto__":{"visit":1},"calculator":"bridge","form":{}}'), 'damaged'],
    ['a disguised prototype key', packed('{"calculator":"bridge","form":{"\\u005f\\u005fproto__":"x"}}'), 'damaged'],
    ['a calculator that is not here', packed('{"calculator":"constructor","form":{}}'), 'unknown-calculator'],
    ['a calculator that is no name', packed('{"calculator":"../bridge","form":{}}'), 'foreign'],
    ['values that are no text', bridge({ plusU: { toString: 'x' } }), 'foreign'],
    [
      'more fields than a form has',
      bridge(Object.fromEntries(Array.from({ length: 200 }, (_, i) => [`f${i}`, '']))),
      'foreign',
    ],
    ['a field as long as a book', bridge({ plusU: 'x'.repeat(limitValue('record-notes') + 1) }), 'foreign'],
    ['an entry more', packed('{"calculator":"bridge","form":{},"run":"alert(1)"}'), 'foreign'],
    ['a list', packed('[]'), 'foreign'],
    ['null', packed('null'), 'foreign'],
    ['no JSON', packed('alert(1)'), 'damaged'],
    ['nested deep', packed(deep(20_000)), 'damaged'],
    ['a visit that is none', packed('{"visit":{}}'), 'foreign'],
    ['a newer visit', packed(JSON.stringify({ visit: { ...visit, version: 3 } })), 'newer'],
    ['a visit that does not fit', packed(JSON.stringify({ visit: { ...visit, seq: 'x' } })), 'does-not-fit'],
  ])('%s', (_what, share, kind) => {
    expect(kindOf(share)).toBe(kind);
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });

  test('a decompression bomb within the longest link', () => {
    const bomb = deflateRawSync(Buffer.alloc(60_000_000, ' '), { level: 9 });
    const share = `1.${toBase64url(new Uint8Array([0, 0, 0, 0, ...bomb]))}`;
    expect(share.length).toBeLessThan(limitValue('share-link'));
    expect(kindOf(share)).toBe('too-large');
  });

  test('a false verdict in a link is dropped', () => {
    const lie = { ...failed, verdict: 'go' as const, sentences: ['All is well. Switch on.'] };
    const steps = { ...visit.steps, bridge: { ...visit.steps.bridge, snapshot: lie } };
    const read = must(readShare(packed(JSON.stringify({ visit: { ...visit, steps } }))));
    expect(JSON.stringify(read)).not.toContain('All is well');
  });

  test('markup in a field is only a text', () => {
    const markup = '<img src=x onerror=alert(1)>';
    expect(readShare(bridge({ plusU: markup }))).toMatchObject({
      ok: true,
      value: { form: { plusU: markup } },
    });
  });
});

test('one character changed anywhere never gives another reading', () => {
  const form = liftVisit('bridge');
  const link = must(shareText({ kind: 'calculator', calculator: 'bridge', form }));
  const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.';
  for (let at = 0; at < link.length; at += 1) {
    for (const character of alphabet) {
      const read = readShare(link.slice(0, at) + character + link.slice(at + 1));
      if (read.ok) expect(read.value).toEqual({ kind: 'calculator', calculator: 'bridge', form });
    }
  }
});
