import { nameOf } from './whole-names.ts';

/** The name of the limit by which an insulation reading is judged after a trip. */
export const afterTripLimit = nameOf('after-trip limit');

/** `E-207`, `F07`, `AL.16`, `alarm 42`, `fault code 7`: a message of a drive. */
const alarmCode =
  /^\s*(?:[a-z]|al|alm|err?|flt)[-. ]?\d{2,4}\s*$|\b(?:alarm|error|fault)s?\s+(?:code |no\.? |number )?[a-z]?-?\d+/;

/** A resistance that only an insulation reading has, and words that ask whether it is enough. */
const insulationFigure = /\d mω(?![\p{L}\d])|\d kω to (?:ground|earth|frame|pe)\b/u;
const insulation = /\binsulation\b|\bmegohms?\b/;
const enough = /\b(?:ok|okay|good|low|enough|minimum|limit|least|acceptable|accept|pass|fail|bad)\b/;

/** What has other figures and limits of its own. */
const otherLimit = /\b(?:per (?:kv|thousand|1000|kft|km)|winding resistance|brak|idle|encoder|routine|1970|tester)/;

/**
 * What a query asks without naming it, as text to search for besides: the meaning of a drive's message, or the limit
 * after a trip. A figure in megohms leads to that limit first, since lower limits are for healthy machines.
 */
export function askedBesides(plain: string): { words: string[]; names: string[] } {
  const asksLimit =
    !otherLimit.test(plain) && (insulationFigure.test(plain) || (insulation.test(plain) && enough.test(plain)));
  return {
    words: alarmCode.test(plain) ? ['alarm', 'code'] : [],
    names: asksLimit ? [afterTripLimit] : [],
  };
}
