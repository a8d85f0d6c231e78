/** Spellings of units after a number, and the one that replaces them. */
const units: [RegExp, string][] = [
  [/(\d)\s*(?:(?:mega?|m)[\s-]*ohms?|megs?|mω)(?![\p{L}\d])/gu, 'mω'],
  [/(\d)\s*(?:(?:kilo|k)[\s-]*ohms?|kω)(?![\p{L}\d])/gu, 'kω'],
  [/(\d)\s*(?:ohms?|ω)(?![\p{L}\d])/gu, 'ω'],
  [/(\d)\s*(?:volts?|vdc|vac|v)(?![\p{L}\d])/gu, 'v'],
  [/(\d)\s*(?:degrees?|deg|°)?\s*(?:celsius|c)(?![\p{L}\d])/gu, '°c'],
  [/(\d)\s*(?:percent|per cent|pct|%)/gu, '%'],
  [/(\d)\s*(?:seconds?|secs?|s)(?![\p{L}\d])/gu, 's'],
  [/(\d)\s*(?:minutes?|mins?|min)(?![\p{L}\d])/gu, 'min'],
];

const words: Record<string, string> = {
  mω: 'megohm',
  kω: 'kilohm',
  ω: 'ohm',
  v: 'volt',
  '°c': 'celsius',
  '%': 'percent',
  s: 'second',
  min: 'minute',
};

/** A text in lower case with one spelling for every unit after a number: `100 megohms` becomes `100 mω`. */
export function withPlainUnits(text: string): string {
  // The ohm sign and the Greek letter look the same.
  let plain = text.toLowerCase().replaceAll('\u2126', 'ω').replaceAll('\u00a0', ' ');
  for (const [spelling, unit] of units) plain = plain.replaceAll(spelling, `$1 ${unit}`);
  return plain;
}

/**
 * Each figure of such a text as one word, so that `100 mω` ranks above pages that contain a 100 and a mω separately.
 */
export function figureWords(plain: string): string[] {
  const figures = plain.matchAll(/(\d+(?:\.\d+)?) (mω|kω|ω|v|°c|%|s|min)(?![\p{L}\d])/gu);
  return [...figures].map(([, number = '', unit = '']) => `${number.replace('.', 'point')}${words[unit]}`);
}
