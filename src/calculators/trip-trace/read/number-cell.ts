export type DecimalMark = '.' | ',';

const words: Record<string, number> = {
  true: 1,
  on: 1,
  high: 1,
  yes: 1,
  false: 0,
  off: 0,
  low: 0,
  no: 0,
};

/** What recorders write for a value that they don't have, or that is beyond their range. */
const absent = /^(|-+|–|nan|null|none|n\/?a|#n\/a|#wert!|#value!|\*+|\?|[+-]?(inf(inity)?|∞|1\.#\w+))$/i;

const plain = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const withUnit = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-zµμΩ°%⁻¹²/]{1,6}\d?)$/i;
/** A figure that no recorder measures: too large to be computed with. */
const overflows = /^[+-]?\d+([.,]\d*)?e\+?\d{3,}$/i;
const clock = /^(?:\d{1,4}[-./]\d{1,2}[-./]\d{1,4}[ T])?(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?Z?$/;

/** Whether a cell says that there is no value. */
export function isAbsent(cell: string): boolean {
  return absent.test(cell.trim()) || overflows.test(cell.trim());
}

/** Whether a cell is a time of day, with or without a date before it. */
export function isClock(cell: string): boolean {
  return clock.test(cell.trim());
}

/**
 * The number in a cell: with the decimal mark of the file, with or without groups of thousands, an exponent, or a unit behind
 * it (`12.5 A`). A time of day counts in seconds from midnight, a word such as `ON` as 1 or 0. NaN if there is no number.
 */
export function numberIn(cell: string, mark: DecimalMark): number {
  const value = anyNumberIn(cell, mark);
  return Number.isFinite(value) ? value : Number.NaN;
}

function anyNumberIn(cell: string, mark: DecimalMark): number {
  let text = cell.trim();
  if (text === '') return Number.NaN;
  const quick = mark === ',' ? text.replace(',', '.') : text;
  if (plain.test(quick) && (mark === '.' || !text.includes('.'))) return Number(quick);
  text = text.replace(/[−–]/g, '-').replace(/[\u00a0\u202f' ](?=\d{3}\b)/g, '');
  const ungrouped = withoutGroups(text, mark);
  if (plain.test(ungrouped)) return Number(ungrouped);
  const time = clock.exec(text);
  if (time !== null) {
    const [, hours = '0', minutes = '0', seconds = '0'] = time;
    return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds.replace(',', '.'));
  }
  const word = words[text.toLowerCase()];
  if (word !== undefined) return word;
  const [, figure] = withUnit.exec(ungrouped) ?? [];
  return figure === undefined ? Number.NaN : Number(figure);
}

/**
 * Takes marks of thousands away and writes a decimal point. `1.234` beside a decimal comma may be a group or another mark: only
 * a second group or the decimal mark itself shows that it is a group.
 */
function withoutGroups(text: string, mark: DecimalMark): string {
  const pattern =
    mark === ',' ? /^([+-]?\d{1,3}(?:\.\d{3})+)(,\d*)?(?!\d)/ : /^([+-]?\d{1,3}(?:,\d{3})+)(\.\d*)?(?!\d)/;
  const [whole = '', groups = '', decimals = ''] = pattern.exec(text) ?? [];
  const isSure = decimals !== '' || groups.split(/[.,]/).length > 2;
  if (isSure) return groups.replace(/[.,]/g, '') + decimals.replace(',', '.') + text.slice(whole.length);
  return mark === ',' ? text.replace(/\./g, '\0').replace(',', '.') : text;
}
