/** A figure with an electrical, temperature or percent unit, or with a bare prefix as people note readings (600k). */
const numberWithUnit = /[−-]?\d+(?:[.,]\d+)*\s?(?:(?:[TGMkmµ]?Ω|[kmµ]?V|[kmµ]?A|°[CF]|%)(?![\p{L}\p{N}])|[kMG]\b)/gu;

/** Figures with units that stand in a text as typed, with an ordinary space. */
export function typedNumbers(text: string): string[] {
  return [...text.replace(/\u00a0|&nbsp;/g, ' ').matchAll(numberWithUnit)].map((match) => match[0]);
}

/**
 * What may be typed in an article, with the reason. Everything else comes from content/limits through `Limit`, or is
 * computed in braces.
 */
export const allowedNumbers: Record<string, string> = {
  '600k': 'shows how an over-range reading is noted; no limit',
  '550 MΩ': 'shows how an over-range reading is noted; no limit',
};
