import { describe, expect, test } from 'vitest';
import { canBeDrawn, drawSheets } from '../../src/library/exercises/drawing/draw-sheets.ts';
import { exerciseSetSchema, type Question } from '../../src/library/exercises/exercise-schema.ts';
import { fillQuestion, plainText, valuesOf } from '../../src/library/exercises/fill.ts';
import { jsonOf } from './support/files.ts';
import { printedFigure, workedResults, workedVerdicts } from './support/worked-results.ts';

const sheets = 30;
const seed = 4821;
const drawable = jsonOf('content/exercises/**/*.json').flatMap(({ path, data }) =>
  exerciseSetSchema
    .parse(data)
    .questions.filter(canBeDrawn)
    .map((question) => {
      const name = `${path.replace(/^content\/exercises\/|\.json$/g, '')} ${question.id}`;
      return { name, question, drawn: drawSheets(question, seed, sheets) };
    }),
);
const textOf = (question: Question) => plainText(fillQuestion(question).question);
const numbersOf = ({ numbers = {} }: Question) => Object.entries(numbers);
const spaced = (text = '') => text.replaceAll('\u00a0', ' ');

test('every section has questions to draw, forty in all', () => {
  const bySection = Object.groupBy(drawable, ({ name }) => name.split('/')[0] ?? '');
  expect(Object.keys(bySection).sort()).toEqual(['deciding', 'measuring', 'safety', 'trip']);
  expect(drawable.length).toBeGreaterThanOrEqual(40);
});

describe.each(drawable)('$name', ({ name, question, drawn }) => {
  test('asks for other figures on each of thirty sheets', () => {
    expect(new Set(drawn.map(textOf)).size).toBe(sheets);
  });

  test('gives the same sheets for the same seed, and others for another', () => {
    expect(drawSheets(question, seed, 3)).toEqual(drawn.slice(0, 3));
    expect(drawSheets(question, seed + 1, 3).map(textOf)).not.toEqual(drawn.slice(0, 3).map(textOf));
  });

  test('has the answers of the textbook', () => {
    const wrong = drawn.flatMap((sheet) => {
      const values = valuesOf(sheet.id, sheet.numbers ?? {});
      const printed = (wanted: string) => spaced(values.get(wanted)?.text);
      return numbersOf(sheet).flatMap(([key, number]) => {
        if (!('compute' in number)) return [];
        if (number.compute.endsWith('Verdict')) return printed(key) === workedVerdicts[name] ? [] : [printed(key)];
        const worked = workedResults[number.compute]?.(
          ...number.with.map((input) => printedFigure(printed(input)).value),
        );
        if (worked === undefined) return [`nobody worked ${number.compute} out`];
        // Three digits are printed; a dew point is compared within a tenth of a degree.
        const allowed = number.compute === 'dewPoint' ? 0.1 : Math.abs(worked) * 0.00501;
        return Math.abs(printedFigure(printed(key)).value - worked) <= allowed
          ? []
          : [`${key} ${printed(key)}: ${worked}`];
      });
    });
    expect(wrong).toEqual([]);
  });

  /**
   * Accuracies typed here a second time: 30 % is the largest error that IEC 61557-2 allows an insulation tester; 1 % of a
   * multimeter and 3 K of a thermometer are common practice, no source.
   */
  test.skipIf(question.nearLimit)('has no reading within the accuracy of a limit that it names', () => {
    const accuracy = (value: number, unit: string) =>
      unit === '°C' ? 3 : unit === 'Ω' ? value * (value < 1e6 ? 0.01 : 0.3) : unit === 'V' ? value * 0.01 : 0;
    const isLimit = (key: string) => {
      const number = question.numbers?.[key] ?? {};
      return 'limit' in number || 'asLimit' in number;
    };
    const near = drawn.flatMap((sheet) => {
      const printed = [...valuesOf(sheet.id, sheet.numbers ?? {})].map(([key, { text }]) => ({
        key,
        ...printedFigure(spaced(text)),
      }));
      const limits = printed.filter(({ key }) => isLimit(key));
      const readings = printed.filter(({ key }) => 'draw' in (question.numbers?.[key] ?? {}));
      return readings.flatMap(({ key, value, unit }) =>
        limits
          .filter((limit) => limit.unit === unit && Math.abs(limit.value - value) < accuracy(value, unit))
          .map((limit) => `${key} ${value} near ${limit.key} ${limit.value}`),
      );
    });
    expect(near).toEqual([]);
  });
});

/** Worked out by hand from the printed figures of the first sheet, with a pocket calculator's four digits. */
test.each([
  ['measuring/bridge-check spread-of-a-rail', '45.2 / 37.5 = 1.2053', 'spread', '20.5 %'],
  ['measuring/choosing-the-limit cold-flatters', '180 MΩ · 2^(−1.5) = 180 MΩ · 0.3536', 'carried', '63.6 MΩ'],
  ['measuring/winding-resistance warm-copper', '3.62 Ω · 254.5 / 297.5', 'carried', '3.1 Ω'],
  ['trip/cable-and-connector-failure in-the-connector', '1 / (1/1.8 + 1/0.9) GΩ = 0.6 GΩ', 'together', '600 MΩ'],
  ['safety/the-dc-bus pair', '2 min · ln(120/50) / ln(160/120) = 2 · 0.8755 / 0.2877', 'wait', '6.09 min'],
])('%s, as printed: %s', (name, _way, key, result) => {
  const question = drawable.find((one) => one.name === name)?.question as Question;
  expect(spaced(valuesOf(question.id, question.numbers ?? {}).get(key)?.text)).toBe(result);
});
