/** What a trainer ordered; kept in the address, so that a link draws the same sheets again. */
export interface SheetOrder {
  /** The seed: the same number draws the same figures on every device. Printed on each sheet. */
  draw: number;
  sheets: number;
  /** Part of an article's address after its section; undefined for all articles of the section. */
  article?: string;
  /** Also questions whose figures are the same on every sheet. */
  all: boolean;
}

/** A large class. */
export const mostSheets = 40;
const highestDraw = 9999;

const defaults: SheetOrder = { draw: 1, sheets: 10, all: false };

/** What the part of an address after `#` orders; what can't be read is as by default. */
export function orderOf(fragment: string): SheetOrder {
  const given = new URLSearchParams(fragment);
  const article = given.get('article');
  return {
    draw: wholeNumber(given.get('draw'), 1, highestDraw) ?? defaults.draw,
    sheets: wholeNumber(given.get('sheets'), 1, mostSheets) ?? defaults.sheets,
    ...(article === null ? {} : { article }),
    all: given.get('all') === 'yes',
  };
}

/** The part of an address after `#` for an order. `orderOf` reads it back. */
export function fragmentOf({ draw, sheets, article, all }: SheetOrder): string {
  const named = { draw: String(draw), sheets: String(sheets), ...(article === undefined ? {} : { article }) };
  return new URLSearchParams({ ...named, ...(all ? { all: 'yes' } : {}) }).toString();
}

/** A whole number within these bounds, or undefined. */
export function wholeNumber(text: string | null, least: number, greatest: number): number | undefined {
  if (text === null || !/^\d{1,6}$/.test(text.trim())) return undefined;
  const number = Number(text);
  return number >= least && number <= greatest ? number : undefined;
}

/** Another draw; `chance` is from 0 to below 1. Never the one before. */
export function otherDraw(before: number, chance: number): number {
  const drawn = 1 + Math.floor(chance * (highestDraw - 1));
  return drawn >= before ? drawn + 1 : drawn;
}
