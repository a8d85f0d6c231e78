import { comparedFields, type Earlier, type EarlierReading, readingIn, type Sister } from '../history/earlier.ts';
import type { MeasuredId } from '../record/visit-digest.ts';

const read = ({ text, celsius }: EarlierReading) => (celsius === '' ? text : `${text} at ${celsius}`);

const besideTexts = {
  last: (reading: EarlierReading) => `Last visit, ${reading.on}: ${read(reading)}.`,
  baseline: (reading: EarlierReading) => `Baseline, ${reading.on}: ${read(reading)}.`,
  sister: (axis: string, reading: EarlierReading) => `Same motor, ${axis}, ${reading.on}: ${read(reading)}.`,
};

/**
 * What is shown beside the fields of a step: the last reading of the axis, its baseline, and of two sister axes the
 * baseline or else the last. `own`: earlier visits, the newest first.
 */
export function besideOf(
  step: MeasuredId,
  own: readonly Earlier[],
  sisters: readonly Sister[],
): Record<string, string> {
  const texts = comparedFields[step].flatMap((field): [string, string][] => {
    const lines = [...ownLines(step, field, own), ...sisterLines(step, field, sisters)];
    return lines.length === 0 ? [] : [[field, lines.join(' ')]];
  });
  return Object.fromEntries(texts);
}

function ownLines(step: MeasuredId, field: string, own: readonly Earlier[]): string[] {
  const last = own.find((earlier) => readingIn(earlier, step, field) !== undefined);
  const baseline = own.find((earlier) => earlier.visit.baseline && readingIn(earlier, step, field) !== undefined);
  const lines: string[] = [];
  const [newest, reference] = [last && readingIn(last, step, field), baseline && readingIn(baseline, step, field)];
  if (newest !== undefined && last !== baseline) lines.push(besideTexts.last(newest));
  if (reference !== undefined) lines.push(besideTexts.baseline(reference));
  return lines;
}

const sistersShown = 2;

function sisterLines(step: MeasuredId, field: string, sisters: readonly Sister[]): string[] {
  const lines = sisters.flatMap(({ name, visits }) => {
    const having = visits.filter((earlier) => readingIn(earlier, step, field) !== undefined);
    const shown = having.find(({ visit }) => visit.baseline) ?? having[0];
    const reading = shown && readingIn(shown, step, field);
    return reading === undefined ? [] : [besideTexts.sister(name, reading)];
  });
  return lines.slice(0, sistersShown);
}
