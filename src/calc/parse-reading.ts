import { parseDecimal } from './decimal.ts';
import { formatQuantity } from './format-reading.ts';
import { limitRange } from './limits.ts';
import { type Quantity, quantityOfUnit, quantityRules } from './quantity.ts';
import { missing, type Reading } from './reading.ts';
import { type ReadingError, type ReadingErrorCode, readingError } from './reading-error.ts';

export type ParseResult = { ok: true; reading: Reading } | { ok: false; error: ReadingError };

/** The longest text that can be one reading; longer is a paste into the wrong place. */
const longest = 40;

/** What may be below zero: a diode test beside a charged bus is, and that must be told, not refused. */
const signed: readonly Quantity[] = ['temperature', 'diode'];

const overRangeWord =
  /^(?:[o0]\.?l\.?|\.ol|over ?load|over[ -]?range|inf(?:inity)?|∞)(?: ?(?:[kMGT]?(?:Ω|ohms?)?|m?V))?$/i;
const underRangeWord = /^under[ -]?range$/i;
/** IEC 60062 notation: the letter stands in place of the decimal mark. */
const letterAsMark = /^(\d+)([kKmMgGtTrRΩ])(\d+) ?(?:Ω|ohms?)?$/;
const numberThenUnit = /^([-+]?)((?:\d|[.,](?=\d))[\d.,' ]*?)(?:e([-+]?\d{1,2}))? ?([^\d.,' ].*)?$/i;

/**
 * Reads what people type: `450k`, `2,2 MΩ`, `2M2`, `0.45 Mohm`, `OL`, `>700M`, `<1k`, with either decimal mark.
 * `bareUnit` is the unit of a bare number where the form lets the person choose one (°F).
 * An empty text or a dash is a missing reading. Anything else that can't be read without guessing is an
 * error with suggestions; this function never throws and never gives NaN.
 */
export function parseReading(text: string, quantity: Quantity, bareUnit = ''): ParseResult {
  const typed = tidy(text);
  const fail = (code: ReadingErrorCode, suggestions: string[] = []): ParseResult => ({
    ok: false,
    error: readingError(code, quantity, { typed, accepted: acceptedText(quantity), length: text.length }, suggestions),
  });
  if (typed === '' || /^[-–—]+$/.test(typed)) return { ok: true, reading: missing };
  if (typed.length > longest) return fail('too-long');
  const { unit, overRange } = quantityRules[quantity];
  if (overRangeWord.test(typed)) {
    return overRange ? { ok: true, reading: { kind: 'over', unit } } : fail('no-over-range');
  }
  if (underRangeWord.test(typed)) {
    return overRange ? { ok: true, reading: { kind: 'under', unit } } : fail('no-over-range');
  }
  const bound = /^(>=?|≥|<=?|≤|over |under |above |below )\s*(.+)$/i.exec(typed);
  if (bound === null) return parseValue(typed, quantity, bareUnit);
  if (!overRange) return fail('no-over-range');
  const sign = /^(>|≥|over|above)/i.test(bound[1] ?? '') ? '>' : '<';
  return asBound(parseValue(bound[2] ?? '', quantity, bareUnit), sign);
}

/** One form for characters that look alike; a minus sign and a no-break space come with pasted text. */
function tidy(text: string): string {
  return text
    .replaceAll('\u2126', 'Ω')
    .replaceAll(/[\u00b5\u03bc]/g, 'u')
    .replaceAll(/[\u2212\u2013](?=\d)/g, '-')
    .replaceAll(/\s+/g, ' ')
    .replaceAll('’', "'")
    .trim();
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

function parseValue(typed: string, quantity: Quantity, bareUnit: string): ParseResult {
  const fail = (code: ReadingErrorCode, candidates: string[] = [], other?: Quantity): ParseResult => {
    const detail = { typed, accepted: acceptedText(quantity), ...(other === undefined ? {} : { other }) };
    const suggestions = candidates.flatMap((text) => readableAs(text, quantity, bareUnit));
    return { ok: false, error: readingError(code, quantity, detail, suggestions) };
  };
  const lettered = quantity === 'resistance' ? letterAsMark.exec(typed) : null;
  const match = lettered
    ? [typed, '', `${lettered[1]}.${lettered[3]}`, undefined, lettered[2]]
    : numberThenUnit.exec(typed);
  if (match === null) return fail('not-a-reading');
  const [, sign = '', numeral = '', power, unitTyped = ''] = match;
  const number = parseDecimal(numeral.trim());
  // A degree sign alone says nothing about the scale: the form's own choice holds.
  const unitText = unitTyped.trim().replace(/^°$/, '') || bareUnit;
  if (number.kind === 'invalid') return fail('not-a-number');
  if (sign === '-' && !signed.includes(quantity)) return fail('negative');
  const { unit, bareNumber, asked = [], meaning } = quantityRules[quantity];
  const unitMeaning = unitText === '' ? ({ kind: 'scale', exponent: 0 } as const) : meaning(unitText);
  if (unitMeaning.kind === 'unknown') {
    const other = quantityOfUnit(unitText);
    return other === undefined ? fail('unit-unknown') : fail('other-quantity', [], other);
  }
  const exponent = Number(power ?? 0);
  const written = (digits: string) => `${sign}${digits}${exponent === 0 ? '' : `e${exponent}`}`;
  if (number.kind === 'ambiguous') {
    const meant = [number.asThousands, number.asDecimal];
    return fail(
      'ambiguous-comma',
      meant.map((digits) => `${written(digits)} ${unitText}`.trim()),
    );
  }
  const plain = written(number.digits);
  if (unitText === '' && !bareNumber) {
    if (Number(number.digits) === 0) return { ok: true, reading: { kind: 'value', value: 0, unit } };
    return fail(
      'unit-missing',
      asked.map((symbol) => `${plain} ${symbol}`),
    );
  }
  if (unitMeaning.kind === 'milli-or-mega') {
    return fail(
      'milli-or-mega',
      quantity === 'voltage' || quantity === 'diode' ? [`${plain} mV`] : [`${plain} mΩ`, `${plain} MΩ`],
    );
  }
  // One decimal numeral with its exponent is rounded once, so that `2.2 MΩ` and `2200k` are the same number.
  const shift = exponent + (unitMeaning.kind === 'scale' ? unitMeaning.exponent : 0);
  const shown = Number(`${sign === '-' ? '-' : ''}${number.digits}e${shift}`);
  const value = unitMeaning.kind === 'convert' ? unitMeaning.toBase(shown) : shown;
  const { from, to } = limitRange(quantityRules[quantity].accepts);
  if (!(value >= from && value <= to)) return fail('out-of-range');
  const step = Number(`1e${shift - number.decimals}`);
  const resolution = unitMeaning.kind === 'convert' ? Math.abs(unitMeaning.toBase(step) - unitMeaning.toBase(0)) : step;
  return { ok: true, reading: { kind: 'value', value: value === 0 ? 0 : value, unit, resolution } };
}

/** Only what can be read is offered; a text that is still in doubt gives way to its own suggestions. */
function readableAs(text: string, quantity: Quantity, bareUnit: string): string[] {
  const result = parseReading(text, quantity, bareUnit);
  return result.ok ? [text] : result.error.suggestions;
}

function acceptedText(quantity: Quantity): string {
  const { accepts, unit } = quantityRules[quantity];
  const { from, to } = limitRange(accepts);
  return `${formatQuantity(from, unit)} to ${formatQuantity(to, unit)}`;
}
