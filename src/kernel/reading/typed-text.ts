/**
 * Letters of other alphabets that look like or mean a letter of a unit: a keyboard set to another language types them.
 * The case is kept, so that a Cyrillic `м` is asked about like a Latin `m`.
 */
const lookAlikes: Record<string, string> = {
  ...{ К: 'K', к: 'k', М: 'M', м: 'm', О: 'O', о: 'o', Г: 'G', г: 'g', Т: 'T', т: 't' },
  ...{ В: 'V', в: 'v', С: 'C', с: 'c', Ф: 'F' },
  ...{ Κ: 'K', κ: 'k', Μ: 'M', Ο: 'O', ο: 'o', Τ: 'T' },
};

const lookAlike = new RegExp(`[${Object.keys(lookAlikes).join('')}]`, 'g');

/** Full-width letters, digits and signs, and units squeezed into one character, of East Asian keyboards. */
const fullWidth = /[\uff01-\uff5e\u3000\u2103\u2109\u3380-\u33df]/g;

/** Zero-width characters, which pasted text may contain. */
const unseen = /[\u00ad\u200b-\u200f\u2060\ufeff]/g;

/** Normalises texts that mean the same: look-alikes, kinds of space, minus and apostrophe, a full stop at the end. */
export function tidy(text: string): string {
  return text
    .replaceAll(fullWidth, (character) => character.normalize('NFKC'))
    .replaceAll(unseen, '')
    .replaceAll('\u2126', 'Ω')
    .replaceAll(/мк(?=[ОоФ]|\s|$)/g, 'µ')
    .replaceAll(/[Оо][Мм]/g, 'ohm')
    .replaceAll('\u03bc', 'µ')
    .replaceAll(lookAlike, (letter) => lookAlikes[letter] ?? letter)
    .replaceAll(/[\u2212\u2013](?=\d)/g, '-')
    .replaceAll(/[’‘ʼ]/g, "'")
    .replaceAll(/\s+/g, ' ')
    .trim()
    .replace(/([^\d.,])\.$/, '$1');
}

/** Whether only dashes were typed: a display shows them if it has no reading. */
export function isDash(text: string): boolean {
  return /^[-‐‑‒–—―−_](?:[-‐‑‒–—―−_ ])*$/.test(tidy(text));
}

const overWords: RegExp[] = [
  // The point is the display's own decimal point; many people type a zero for the O.
  /^(?:[01]?\.)?[o0]\.?l\.?$/i,
  /^[o0] l$/i,
  /^(?:ofl|oflo|ovl|ovld|over ?load|over ?flow|over[ -]?range)$/i,
  /^(?:inf(?:inity)?|∞)$/i,
];
const openWord = /^open(?: (?:circuit|line|loop))?$/i;
const underWord = /^under[ -]?range$/i;
const unitAfterWord = / ?(?:[kMGT](?:Ω|ohms?)?|Ω|ohms?|m?V)$/i;

/**
 * What a display or a person writes instead of a figure. `open` says over-range of a path, never of a voltage. A unit
 * may follow, the selected range.
 */
export function rangeWord(typed: string, ofPath: boolean): 'over' | 'under' | undefined {
  if (underWord.test(typed)) return 'under';
  const texts = [typed, typed.replace(unitAfterWord, '')];
  if (texts.some((text) => overWords.some((word) => word.test(text)))) return 'over';
  return ofPath && texts.some((text) => openWord.test(text)) ? 'over' : undefined;
}
