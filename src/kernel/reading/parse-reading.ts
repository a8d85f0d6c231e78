import { limitRange } from '../limits.ts';
import { parseDecimal } from './decimal.ts';
import { formatQuantity } from './format-reading.ts';
import { pointInDoubt } from './point-in-doubt.ts';
import { type Quantity, quantityOfUnit, quantityRules } from './quantity.ts';
import { missing, type Reading } from './reading.ts';
import { type ReadingError, type ReadingErrorCode, readingError } from './reading-error.ts';
import { isDash, rangeWord, tidy } from './typed-text.ts';
import type { UnitMeaning } from './unit-words.ts';

type ParseResult = { ok: true; reading: Reading } | { ok: false; error: ReadingError };

/** The longest text that can be one reading; anything longer was pasted into the wrong field. */
const longest = 40;

/** IEC 60062 notation: the letter replaces the decimal mark. */
export const letterAsMark = /^(\d+)([kKmMgGtTrRΩ])(\d+) ?(?:Ω|ohms?)?$/;
const numberThenUnit = /^([-+]?)((?:\d|[.,](?=\d))[\d.,' ]*?)(?:e([-+]?\d{1,2}))? ?([^\d.,' ].*)?$/i;

/**
 * Reads what people type: `450k`, `2,2 MΩ`, `2M2`, `0.45 Mohm`, `OL`, `>700M`, `<1k`, with either decimal mark.
 * `bareUnit` is the unit of a bare number if the form lets the person choose one (°F); `units` are those that a bare
 * number is asked about, if the field knows better than the quantity. An empty text or a dash is a missing reading.
 * Anything else that can't be read without guessing is an error with suggestions; this function never
 * throws and never gives NaN. `pointInDoubt` explains when a point is asked about.
 */
export function parseReading(
  text: string,
  quantity: Quantity,
  bareUnit = '',
  units: readonly string[] = quantityRules[quantity].units,
): ParseResult {
  const typed = tidy(text);
  const fail = (code: ReadingErrorCode, candidates: string[] = []) =>
    failure(code, candidates, { typed, quantity, bareUnit, units, length: text.length });
  if (typed === '' || isDash(typed)) return { ok: true, reading: missing };
  if (typed.length > longest) return fail('too-long');
  const { unit, overRange, asks } = quantityRules[quantity];
  const word = rangeWord(typed, quantity !== 'voltage');
  if (word !== undefined) return overRange ? { ok: true, reading: { kind: word, unit } } : fail('no-over-range');
  if (overRange && bareUnit === '' && /^1\.?$/.test(typed)) {
    return fail('lone-one', [...(asks ? units : [unit]).map((symbol) => `1 ${symbol}`), 'OL']);
  }
  const bound = /^(>=?|≥|<=?|≤|over |under |above |below )\s*(.+)$/i.exec(typed);
  if (bound === null) return parseValue(typed, quantity, bareUnit, units);
  if (!overRange) return fail('no-over-range');
  const sign = /^(>|≥|over|above)/i.test(bound[1] ?? '') ? '>' : '<';
  return asBound(parseValue(bound[2] ?? '', quantity, bareUnit, units), sign);
}

function asBound(result: ParseResult, sign: '>' | '<'): ParseResult {
  if (!result.ok) {
    return { ok: false, error: { ...result.error, suggestions: result.error.suggestions.map((s) => sign + s) } };
  }
  if (result.reading.kind !== 'value') return result;
  const { value, unit } = result.reading;
  return {
    ok: true,
    reading: sign === '>' ? { kind: 'over', unit, atLeast: value } : { kind: 'under', unit, atMost: value },
  };
}

function parseValue(typed: string, quantity: Quantity, bareUnit: string, units: readonly string[]): ParseResult {
  const fail = (code: ReadingErrorCode, candidates: string[] = [], other?: Quantity) =>
    failure(code, candidates, { typed, quantity, bareUnit, units, ...(other && { other }) });
  const lettered = quantity === 'resistance' ? letterAsMark.exec(typed) : null;
  const match = lettered
    ? [typed, '', `${lettered[1]}.${lettered[3]}`, undefined, lettered[2]]
    : numberThenUnit.exec(typed);
  if (match === null) return fail('not-a-reading');
  const [, sign = '', numeral = '', power = '0', unitTyped = ''] = match;
  const number = parseDecimal(numeral.trim());
  // A degree sign alone does not name the scale, so the form's choice applies.
  const unitText = unitTyped.trim().replace(/^°$/, '') || bareUnit;
  if (number.kind === 'invalid') return fail('not-a-number');
  const { unit, bareDecimals, asks, signed, meaning, accepts } = quantityRules[quantity];
  if (sign === '-' && !signed) return fail('negative');
  const unitMeaning = unitText === '' ? ({ kind: 'scale', exponent: 0 } as const) : meaning(unitText);
  if (unitMeaning.kind === 'unknown') {
    const other = quantityOfUnit(unitText);
    return other === undefined ? fail('unit-unknown') : fail('other-quantity', [], other);
  }
  const written = (digits: string, symbol = unitText) =>
    `${sign}${digits}${Number(power) === 0 ? '' : `e${Number(power)}`} ${symbol}`.trim();
  if (number.kind === 'ambiguous') {
    const code = number.zeroLeads ? 'zero-leads-groups' : 'ambiguous-comma';
    return fail(
      code,
      number.meanings.map((digits) => written(digits)),
    );
  }
  const { digits, decimals } = number;
  if (unitMeaning.kind === 'milli-or-mega') {
    return fail(
      'milli-or-mega',
      (unit === 'V' ? ['mV'] : ['mΩ', 'MΩ']).map((symbol) => written(digits, symbol)),
    );
  }
  const toBase = toBaseUnit(unitMeaning, Number(power));
  const { from, to } = limitRange(accepts);
  const value = toBase(sign === '-' ? `-${digits}` : digits);
  const fits = value >= from && value <= to;
  const bare = unitText === '' && asks;
  if (bare && Number(digits) === 0 && decimals < bareDecimals)
    return { ok: true, reading: { kind: 'value', value: 0, unit } };
  if (bare && (decimals < bareDecimals || !fits)) {
    return fail(
      'unit-missing',
      units.map((symbol) => written(digits, symbol)),
    );
  }
  if (!fits) return fail('out-of-range');
  if (!lettered && pointInDoubt(digits, quantity, toBase)) {
    // A zero before the point makes it the decimal mark beyond doubt, as on a display that pads with zeros.
    return fail('ambiguous-point', [written(digits.replace('.', '')), written(`0${digits}`)]);
  }
  const resolution = Math.abs(toBase(`1e-${decimals}`) - toBase('0'));
  return { ok: true, reading: { kind: 'value', value: value === 0 ? 0 : value, unit, resolution } };
}

/**
 * The value of a plain numeral in the base unit. One numeral with its exponent is rounded once, so that `2.2 MΩ` and
 * `2200k` are the same number.
 */
function toBaseUnit(meaning: UnitMeaning, power: number): (numeral: string) => number {
  const shift = power + (meaning.kind === 'scale' ? meaning.exponent : 0);
  return (numeral) => {
    const [digits = '', own = '0'] = numeral.split('e');
    const shown = Number(`${digits}e${Number(own) + shift}`);
    return meaning.kind === 'convert' ? meaning.toBase(shown) : shown;
  };
}

interface Entry {
  typed: string;
  quantity: Quantity;
  bareUnit: string;
  units: readonly string[];
  other?: Quantity;
  length?: number;
}

/** Only readable texts are offered; a text that is still in doubt is replaced by its own suggestions. */
function failure(code: ReadingErrorCode, candidates: readonly string[], entry: Entry): ParseResult {
  const { quantity, bareUnit, units, ...detail } = entry;
  const suggestions = candidates.flatMap((text) => {
    const result = parseReading(text, quantity, bareUnit, units);
    // Only a typed lone 1 may mean over-range, not an offered one.
    return result.ok ? [text] : result.error.suggestions.filter((one) => one !== 'OL');
  });
  const { accepts, unit } = quantityRules[quantity];
  const { from, to } = limitRange(accepts);
  const accepted = `${formatQuantity(from, unit)} to ${formatQuantity(to, unit)}`;
  return { ok: false, error: readingError(code, quantity, { ...detail, units, accepted }, [...new Set(suggestions)]) };
}
