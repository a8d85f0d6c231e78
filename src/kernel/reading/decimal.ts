/**
 * A typed number: `digits` is a plain decimal numeral for `Number`, `decimals` how many digits follow the mark.
 * `ambiguous` lists the meanings as numerals that can be read: `1,000` is one thousand to some and one to others.
 */
export type Decimal =
  | { kind: 'number'; digits: string; decimals: number }
  | { kind: 'ambiguous'; meanings: string[]; zeroLeads: boolean }
  | { kind: 'invalid' };

const invalid: Decimal = { kind: 'invalid' };
const grouped = (mark: string) => new RegExp(`^\\d{1,3}(?:[${mark}]\\d{3})+$`);

/**
 * Reads digits with either decimal mark and with groups of three. A single point is the decimal mark, since instruments
 * show it so; `pointInDoubt` says when that may be wrong. A single comma before three digits is ambiguous. A zero never
 * starts groups: `0 500` may be a lost digit or a slipped decimal mark, and only `0,` or `0.` has a single meaning.
 */
export function parseDecimal(text: string): Decimal {
  if (!/^[\d.,' ]*\d[\d.,' ]*$/.test(text)) return invalid;
  const points = text.split('.').length - 1;
  const commas = text.split(',').length - 1;
  if (/[ ']/.test(text)) return parseSpaced(text);
  if (points > 0 && commas > 0) return parseBothMarks(text);
  if (points > 1) return grouped('.').test(text) ? groups(text.split('.')) : invalid;
  if (commas > 1) return grouped(',').test(text) ? groups(text.split(',')) : invalid;
  const comma = /^(\d{1,3}),(\d{3})$/.exec(text);
  if (comma?.[1] !== undefined && Number(comma[1]) > 0) return ambiguous(comma[1], comma[2] ?? '');
  return plain(text.replace(',', '.'));
}

function parseSpaced(text: string): Decimal {
  const [whole = '', fraction, ...rest] = text.split(/[.,]/);
  if (
    rest.length > 0 ||
    !/^\d{1,3}([ '])\d{3}(?:\1\d{3})*$/.test(whole) ||
    (fraction !== undefined && !/^\d+$/.test(fraction))
  ) {
    return invalid;
  }
  return groups(whole.split(/[ ']/), fraction);
}

function parseBothMarks(text: string): Decimal {
  const mark = text.lastIndexOf('.') > text.lastIndexOf(',') ? '.' : ',';
  const group = mark === '.' ? ',' : '.';
  const [whole = '', fraction = '', ...rest] = text.split(mark);
  if (rest.length > 0 || !grouped(group).test(whole) || !/^\d+$/.test(fraction)) return invalid;
  return groups(whole.split(group), fraction);
}

/** A number in groups of three; a zero before them leaves two meanings, and with one more mark too many. */
function groups([first = '', ...others]: readonly string[], fraction?: string): Decimal {
  if (first.startsWith('0')) return fraction === undefined ? ambiguous(first, others.join('')) : invalid;
  return plain(`${first}${others.join('')}${fraction === undefined ? '' : `.${fraction}`}`);
}

/** `first` followed by a mark that separates thousands or decimals. */
function ambiguous(first: string, rest: string): Decimal {
  const whole = (digits: string) => digits.replace(/^0+(?=\d)/, '');
  const meanings = [whole(first + rest), `${whole(first)}.${rest}`];
  return { kind: 'ambiguous', meanings, zeroLeads: first.startsWith('0') };
}

function plain(numeral: string): Decimal {
  const fraction = numeral.split('.')[1] ?? '';
  return { kind: 'number', digits: numeral, decimals: fraction.length };
}
