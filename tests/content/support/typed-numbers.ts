/** Electrical, thermal, mechanical and time units, percent, or a bare prefix as people note readings (720k). */
const units = [
  '[TGMkmµ]?Ω',
  '[kmµ]?V(?:/µs)?',
  '[kmµ]?A',
  '[kmµ]?W',
  '[kM]?Hz',
  '[µn]?F',
  '[mµ]?H',
  'k?J',
  'N·?m',
  '°[CF]?',
  '%',
  'percent',
  '[mµn]?s',
  'min',
  'h',
  '(?:milli|micro|kilo|mega)?(?:ohm|volt|ampere|watt|second|metre)s?',
  '(?:minute|hour|day|week|month|year|degree)s?',
  '[kcmµ]?m',
  'k?g',
];
const numeral = '[−-]?\\d+(?:[.,]\\d+)*';
const numberWithUnit = new RegExp(`${numeral}[\\s-]?(?:(?:${units.join('|')})(?![\\p{L}\\p{N}])|[kMG]\\b)`, 'gu');

/** The same in words: "five minutes". "One second" may mean "the other one", so "one" is left out. */
const inWords =
  /\b(?:two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|hundred|thousand|million)[ -](?:megohms?|ohms?|volts?|amperes?|watts?|degrees|percent|milliseconds|seconds|minutes|hours|days|weeks|months|years|metres)\b/gi;

/** Figures with units typed in a text, with an ordinary space. */
export function typedNumbers(text: string): string[] {
  const plain = text.replace(/\u00a0|&nbsp;/g, ' ');
  return [...plain.matchAll(numberWithUnit), ...plain.matchAll(inWords)].map((match) => match[0]);
}

/**
 * What may be typed in an article, with the reason. Everything else comes from content/limits through `Limit`, is a
 * reading of an invented example in `Reading`, or is computed in braces.
 */
export const allowedNumbers: Record<string, string> = {
  '720k': 'shows how an over-range reading is noted; no limit',
  '700 MΩ': 'shows how an over-range reading is noted; no limit',
};
