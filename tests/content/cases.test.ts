import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { calculatorNames } from '../../src/calculators/registry.ts';
import { parseReading } from '../../src/kernel/reading/parse-reading.ts';
import type { Quantity } from '../../src/kernel/reading/quantity.ts';
import { caseForm } from '../../src/library/cases/case-forms.ts';
import { casePieces } from '../../src/library/cases/case-prose.ts';
import { type VisitCase, visitCaseSchema } from '../../src/library/cases/case-schema.ts';
import { caseVisit } from '../../src/library/cases/case-visit.ts';
import { readShare, shareText, withoutSnapshots } from '../../src/visit/record/share.ts';
import { visitSchema } from '../../src/visit/record/visit-schema.ts';
import { filesOf, jsonOf } from './support/files.ts';
import { readingLevel } from './support/reading-level.ts';

// The verdicts and decisions in the files are worked out by hand from their readings; calculators and guide must agree.

const cases = jsonOf('content/cases/*.json').map(({ path, data }) => ({ id: basename(path, '.json'), data }));
const parsed = cases.map(({ id, data }) => ({ id, data: visitCaseSchema.parse(data) }));

test('at least ten cases, and every calculator has one', () => {
  expect(parsed.length).toBeGreaterThanOrEqual(10);
  const filled = new Set(parsed.flatMap(({ data }) => Object.keys(data.forms)));
  expect(calculatorNames.filter((name) => !filled.has(name))).toEqual([]);
});

test('their endings differ, and each has its own place in the list', () => {
  const endings = parsed.map(({ data: { visit } }) => [visit.decision.kind, Object.keys(visit.decision.replace)]);
  expect(new Set(endings.map((ending) => JSON.stringify(ending))).size).toBeGreaterThanOrEqual(9);
  expect(new Set(parsed.map(({ data }) => data.order)).size).toBe(parsed.length);
  expect(new Set(parsed.map(({ data }) => data.title)).size).toBe(parsed.length);
});

describe.each(parsed)('$id', ({ id, data }) => {
  const evaluated = caseVisit(id, data);
  const { visit } = evaluated;
  const filled = calculatorNames.filter((name) => data.forms[name] !== undefined);

  test('states a verdict for each calculator that it fills, and for no other', () => {
    expect(Object.keys(data.expected).sort()).toEqual([...filled].sort());
    expect(Object.keys(data.notes ?? {}).filter((name) => !(name in data.forms))).toEqual([]);
  });

  test.each(filled)('gives the verdict worked out by hand: %s', (name) => {
    const outcome = caseForm(name).form.judge(data.forms[name] ?? {});
    expect(outcome).toMatchObject({ state: 'judged', verdict: data.expected[name] });
  });

  test.each(filled)('names only fields that the form has: %s', (name) => {
    const ids = [...caseForm(name).form.fields.map((field) => field.id), 'leftOpen'];
    expect(Object.keys(data.forms[name] ?? {}).filter((field) => !ids.includes(field))).toEqual([]);
  });

  test('the guide leads step by step to the decision worked out by hand', () => {
    const { path, due, decision, offPath } = evaluated.guide;
    expect(due).toBeUndefined();
    expect(offPath).toEqual([]);
    expect(path.map((step) => step.id)).toEqual(data.visit.steps.map(({ step }) => step));
    expect(path.filter(({ status }) => status !== 'done')).toEqual([]);
    const { kind, replace, good, open } = data.visit.decision;
    expect(decision?.kind).toBe(kind);
    expect(Object.fromEntries((decision?.replace ?? []).map(({ part, proofs }) => [part, proofs]))).toEqual(replace);
    expect([...(decision?.good ?? [])].sort()).toEqual([...good].sort());
    expect([...(decision?.open ?? [])].sort()).toEqual([...open].sort());
  });

  test('is a record that the site can store, and that a link carries unchanged', () => {
    expect(visitSchema.safeParse(visit).error?.issues ?? []).toEqual([]);
    const share = shareText({ kind: 'visit', visit });
    expect(share.ok && readShare(share.value)).toEqual({
      ok: true,
      value: { kind: 'visit', visit: withoutSnapshots(visit) },
    });
  });

  test('its clock runs forward', () => {
    const times = data.visit.steps.map(({ at }) => at);
    expect(times).toEqual([...new Set(times)].sort());
  });

  test('the joined stage holds the readings of the insulation step', () => {
    const { insulation, isolation } = visit.steps;
    for (const terminal of isolation === undefined ? [] : ['U', 'V', 'W', 'PE']) {
      expect(isolation?.form[`joined${terminal}`]).toBe(insulation?.form[terminal]);
    }
  });

  test('says that it is invented in every form', () => {
    expect(visit.site).toBe('Marrow Bay Glassworks');
    expect(visit.notes).toMatch(/^Invented: /);
  });

  test('mentions only readings of its forms, and limits by name', () => {
    expect(
      proseOf(data)
        .flatMap(quantitiesIn)
        .filter(isUnknown(typedIn(data))),
    ).toEqual([]);
    expect(() => proseOf(data).map(casePieces)).not.toThrow();
  });

  test('names articles that exist', () => {
    const articles = filesOf('content/articles/**/*.mdx').map(({ path }) => path.slice('content/articles/'.length, -4));
    expect(data.articles.filter((article) => !articles.includes(article))).toEqual([]);
  });

  test('can be read aloud', () => {
    const { longest, average, ease } = readingLevel(`---\ntitle: A\n---\n${proseOf(data).join('\n\n')}`);
    expect(longest.words, longest.sentence).toBeLessThanOrEqual(40);
    expect(average).toBeLessThan(15);
    expect(ease).toBeGreaterThan(60);
  });
});

const proseOf = ({ summary, story, notes, conclusion, learn }: VisitCase) => [
  summary,
  ...story,
  ...Object.values(notes ?? {}),
  ...conclusion,
  ...learn,
];

/** All entries of the case. */
const typedIn = ({ forms, visit }: VisitCase) =>
  [...Object.values(forms), ...visit.steps.map(({ form }) => form ?? {})].flatMap((form) => Object.values(form));

const units: Record<string, Quantity> = {
  GΩ: 'resistance',
  MΩ: 'resistance',
  kΩ: 'resistance',
  mΩ: 'resistance',
  Ω: 'resistance',
  V: 'voltage',
  '°C': 'temperature',
  '%': 'percent',
  min: 'duration',
  mm: 'diameter',
  W: 'power',
  m: 'length',
  µF: 'capacitance',
};

interface Told {
  text: string;
  quantity: Quantity;
}

const pattern = new RegExp(`\\d+(?:\\.\\d+)? ?(${Object.keys(units).join('|')})(?![\\p{L}])`, 'gu');

function quantitiesIn(text: string): Told[] {
  return [...text.matchAll(pattern)].map(([found, unit = '']) => ({ text: found, quantity: units[unit] ?? 'percent' }));
}

/** The text may round: "about 46 kΩ" for 46.1 kΩ. */
const rounding = 0.05;

const isUnknown = (typed: readonly string[]) => (told: Told) => {
  const value = numberOf(told.text, told.quantity);
  const known = typed.map((text) => numberOf(text, told.quantity));
  return !known.some((one) => one !== undefined && value !== undefined && Math.abs(one / value - 1) <= rounding);
};

function numberOf(text: string, quantity: Quantity): number | undefined {
  const result = parseReading(text, quantity);
  if (!result.ok) return undefined;
  const { reading } = result;
  if (reading.kind === 'value') return reading.value;
  return reading.kind === 'over' ? reading.atLeast : undefined;
}

test('a reading that no form has is found, a rounded one is accepted', () => {
  const [far, near] = quantitiesIn('It reads 3 MΩ, or about 46 kΩ.');
  const unknown = isUnknown(['46.1k', '500 V']);
  expect(far && unknown(far)).toBe(true);
  expect(near && unknown(near)).toBe(false);
});
