import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import bridge from '../../../../content/exercises/measuring/bridge-check.json' with { type: 'json' };
import diode from '../../../../content/exercises/measuring/diode-test.json' with { type: 'json' };
import { exerciseSetSchema } from '../../../../src/library/exercises/exercise-schema.ts';
import { exportedSheets } from '../../../../src/library/trainers/drawn-sheets/exported-sheets.ts';
import { SheetView } from '../../../../src/library/trainers/drawn-sheets/SheetView.tsx';
import { drawnSheets, orderedQuestions } from '../../../../src/library/trainers/drawn-sheets/section-sheets.ts';
import {
  fragmentOf,
  mostSheets,
  orderOf,
  otherDraw,
  wholeNumber,
} from '../../../../src/library/trainers/drawn-sheets/sheet-order.ts';

const section = {
  section: 'measuring',
  title: 'Measuring',
  articles: [
    { slug: 'bridge-check', title: 'Bridge check', questions: exerciseSetSchema.parse(bridge).questions },
    { slug: 'diode-test', title: 'Diode test', questions: exerciseSetSchema.parse(diode).questions },
  ],
};

test.each([
  { draw: 1, sheets: 10, all: false },
  { draw: 4821, sheets: 30, all: true, article: 'bridge-check' },
])('an address keeps the order %o', (order) => {
  expect(orderOf(fragmentOf(order))).toEqual(order);
});

test.each(['', 'draw=0&sheets=41', 'draw=x&sheets=-3', 'draw=1.5', 'sheets=1e9'])(
  'an address %j is the default',
  (text) => {
    expect(orderOf(text)).toEqual({ draw: 1, sheets: 10, all: false });
  },
);

test('a number of sheets is whole and within bounds', () => {
  expect(wholeNumber(' 30 ', 1, mostSheets)).toBe(30);
  expect(['0', '41', '3,5', '', 'ten'].map((text) => wholeNumber(text, 1, mostSheets))).toEqual(
    Array(5).fill(undefined),
  );
});

test('other figures are another draw, up to the highest', () => {
  for (const chance of [0, 0.5, 0.99999]) {
    for (const before of [1, 5000, 9999]) {
      const next = otherDraw(before, chance);
      expect(next).not.toBe(before);
      expect(wholeNumber(String(next), 1, 9999)).toBe(next);
    }
  }
});

test('an order takes one article or all, and questions without figures only if asked', () => {
  const ids = (order: Parameters<typeof orderedQuestions>[1]) =>
    orderedQuestions(section, order).map(({ question }) => question.id);
  const order = { draw: 1, sheets: 1, all: false };
  expect(ids({ ...order, article: 'diode-test' })).toEqual(['conducting-both-ways', 'passes-here-fails-there']);
  expect(ids({ ...order, article: 'diode-test', all: true })).toContain('minus-sign');
  expect(ids(order)).toHaveLength(5);
});

test('thirty sheets differ, a class sheet has no answer, and answers fit their sheet', async () => {
  const sheets = await drawnSheets(section, { draw: 7, sheets: 30, all: true });
  const views = (answers: boolean) =>
    sheets.map((sheet) => render(<SheetView section={section} sheet={sheet} draw={7} sheets={30} answers={answers} />));
  const asked = views(false);
  expect(new Set(asked.map((html) => html.replaceAll(/sheet-\d+|Sheet \d+/g, ''))).size).toBe(30);
  for (const html of asked) expect(html).not.toContain('sheet-answer');
  // The spread on the answer sheet is that of the three readings on the class sheet.
  views(true).forEach((html, i) => {
    const readings = /From DC− you read ([\d.]+).kΩ, ([\d.]+).kΩ and ([\d.]+).kΩ/.exec(asked[i] ?? '')?.slice(1);
    const [, v = Number.NaN, w = Number.NaN] = readings?.map(Number) ?? [];
    const spread = /Divided by the smaller it is ([\d.]+).%/.exec(html)?.[1];
    expect(Math.abs(Number(spread) - (v / w - 1) * 100)).toBeLessThan(0.06);
  });
});

test('exported, a drawn question has an id for each sheet, one without figures a single one', async () => {
  const order = { draw: 7, sheets: 2, article: 'diode-test', all: true };
  const ids = exportedSheets(section, 7, await drawnSheets(section, order)).map(({ questions }) =>
    questions.map(({ id }) => id),
  );
  expect(ids[0]?.[0]).toBe('measuring_diode-test_conducting-both-ways_draw7_sheet1');
  expect(ids[1]?.[0]).toBe('measuring_diode-test_conducting-both-ways_draw7_sheet2');
  expect(ids[0]?.[2]).toBe('measuring_diode-test_minus-sign');
  expect(ids[1]?.[2]).toBe('measuring_diode-test_minus-sign');
});
