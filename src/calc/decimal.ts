/**
 * A typed number: `digits` is a plain decimal numeral for `Number`, `decimals` how many stand after the mark.
 * `ambiguous` carries both meanings, as plain numerals: `1,000` is one thousand to some and one to others.
 */
export type Decimal =
  | { kind: 'number'; digits: string; decimals: number }
  | { kind: 'ambiguous'; asThousands: string; asDecimal: string }
  | { kind: 'invalid' };

const invalid: Decimal = { kind: 'invalid' };
const grouped = (mark: string) => new RegExp(`^\\d{1,3}(?:[${mark}]\\d{3})+$`);

/**
 * Reads digits with either decimal mark and with groups of three. A single point is always the decimal
 * mark, since that is what instruments show; a single comma before three digits is ambiguous unless a zero leads.
 */
export function parseDecimal(text: string): Decimal {
  if (!/^[\d.,' ]*\d[\d.,' ]*$/.test(text)) return invalid;
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  if (/[ ']/.test(text)) return parseSpaced(text);
  if (points > 0 && commas > 0) return parseBothMarks(text);
  if (points > 1) return grouped('.').test(text) ? plain(text.replaceAll('.', '')) : invalid;
  if (commas > 1) return grouped(',').test(text) ? plain(text.replaceAll(',', '')) : invalid;
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
    return { kind: 'ambiguous', asThousands: text.replace(',', ''), asDecimal: text.replace(',', '.') };
  }
  return plain(text.replace(',', '.'));
}

function parseSpaced(text: string): Decimal {
  const [whole = '', fraction, ...rest] = text.split(/[.,]/);
  if (rest.length > 0 || !grouped(" '").test(whole) || (fraction !== undefined && !/^\d+$/.test(fraction))) {
    return invalid;
  }
  const digits = whole.replaceAll(/[ ']/g, '');
  return plain(fraction === undefined ? digits : `${digits}.${fraction}`);
}

function parseBothMarks(text: string): Decimal {
  const mark = text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',';
  const group = mark === '.' ? ',' : '.';
  const [whole = '', fraction = '', ...rest] = text.split(mark);
  if (rest.length > 0 || !grouped(group).test(whole) || !/^\d+$/.test(fraction)) return invalid;
  return plain(`${whole.replaceAll(group, '')}.${fraction}`);
}

function plain(numeral: string): Decimal {
  const fraction = numeral.split('.')[1] ?? '';
  return { kind: 'number', digits: numeral, decimals: fraction.length };
}
