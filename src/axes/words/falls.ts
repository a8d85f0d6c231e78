import { limitValue } from '../../kernel/limits.ts';
import { inCelsius, inOhms } from '../../kernel/reading/format-reading.ts';
import type { Compared, Since } from '../history/falls.ts';
import type { InsulatedPart } from '../history/points.ts';

export const insulatedNames: Record<InsulatedPart, string> = {
  joined: 'motor and cable joined',
  motor: 'motor alone',
  cable: 'cable alone',
};

const sinceNames: Record<Since, string> = {
  last: 'the last visit',
  baseline: 'the baseline',
  best: 'its best reading',
};

/** Beside the word of the verdict. */
export const fallInShort: Record<Exclude<Compared['level'], 'none'>, string> = {
  unknown: 'the insulation may have fallen',
  fall: 'but the insulation has fallen',
};

/** A fall, or why it is not known; for screen, report and decision alike. */
export function fallText({ level, since, before, now, factor, corrected }: Compared): string {
  const day = before.at.slice(0, 10);
  const readings = `${before.text} on ${day}, ${now.text} now`;
  if (level === 'none') return '';
  if (level === 'unknown') {
    const lower = rangeNotNoted(before) ? 'It may be lower than' : 'Lower than';
    return `${lower} at ${sinceNames[since]}, ${insulatedNames[now.part]}: ${readings}. Whether the insulation has fallen is not known: ${unknownBecause(before, now)}`;
  }
  // A zero is a bound on a logarithmic axis: its factor says nothing to a reader.
  const by = factor < 1000 ? `by a factor of at least ${Number(factor.toPrecision(2))}` : 'to almost nothing';
  const compared = corrected
    ? `At ${reference()} that is ${inOhms(corrected.before)}, then ${inOhms(corrected.now)}.`
    : 'Compared as read, without the temperatures: a warm winding reads lower.';
  return `Fallen since ${sinceNames[since]} ${by}, ${insulatedNames[now.part]}: ${readings}. ${now.part === 'cable' ? '' : `${compared} `}A fall by more than ${limitValue('trend-drop')} is no ageing, also above the limit: moisture, dirt, heat or damage is at work. Find it, and measure again soon.`;
}

const reference = () => inCelsius(limitValue('reference-temperature-routine'));

const rangeNotNoted = ({ reading }: Compared['before']) => reading.kind === 'over' && reading.atLeast === undefined;

function unknownBecause(before: Compared['before'], now: Compared['now']): string {
  if (rangeNotNoted(before)) return 'the range was not noted then.';
  return now.part === 'cable'
    ? 'a cable that is warm reads lower.'
    : 'a winding temperature is missing or outside what the correction holds for, and a warm winding reads lower.';
}

export const secondDriveText = (earlier: string, later: string) =>
  `Two drives on this axis within ${limitValue('drives-within') * 12} months: ${earlier} and ${later}. What kills drives here? A third one would go the same way. Before it is connected, motor and cable are measured apart, with the axis moved and the cable bent.`;
