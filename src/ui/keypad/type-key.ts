import type { TypingKey } from './keys.ts';

/** Text of a field with the selection in it; `start` equals `end` at a caret. */
export interface EditedText {
  text: string;
  start: number;
  end: number;
}

const atCaret = (text: string, caret: number): EditedText => ({ text, start: caret, end: caret });
const atEnd = (text: string) => atCaret(text, text.length);

const overWord = /^\s*OL\s*$/i;
const unitAtEnd = /\s*[^\s\d.,<>+-][^\d.,<>]*$/;
/** More than one letter, or a gap before it: what one key typed, one key deletes. */
const longUnitAtEnd = /(?:\s+[^\s\d.,<>+-][^\d.,<>]*|[^\s\d.,<>+-]{2,})$/;

/** The text after a key. Digits go to the caret, as from any keyboard; a key that has no meaning there changes nothing. */
export function typeKey(before: EditedText, key: TypingKey): EditedText {
  // A figure after OL is a new entry.
  const edited = overWord.test(before.text) && key.kind !== 'delete' ? atEnd('') : before;
  const { text, start, end } = edited;
  switch (key.kind) {
    case 'put':
      return insert(edited, key.text);
    case 'mark':
      return /[.,]/.test(text.slice(0, start) + text.slice(end)) ? before : insert(edited, key.text);
    case 'unit':
      return withUnit(edited, key.text) ?? before;
    case 'word':
      return atEnd(key.text);
    case 'bound':
      return withSign(edited, /^\s*[<>≤≥]=?\s*/, key.text);
    case 'minus':
      return /^\s*[-−]/.test(text) ? withSign(edited, /^\s*[-−]\s*/, '') : withSign(edited, /^/, '-');
    case 'delete':
      return withoutLast(edited);
  }
}

function insert({ text, start, end }: EditedText, added: string): EditedText {
  return atCaret(text.slice(0, start) + added + text.slice(end), start + added.length);
}

/** A unit that stands at the end already is replaced: a slip of the unit takes one key to mend. */
function withUnit({ text, end }: EditedText, unit: string): EditedText | undefined {
  if (!/\d/.test(text)) return undefined;
  if (unitAtEnd.test(text)) return atEnd(text.replace(unitAtEnd, '') + unit);
  // A letter amid the digits is their decimal mark; one with a gap before it can't be.
  return unit.startsWith(' ') ? atEnd(text.trimEnd() + unit) : insert(atCaret(text, end), unit);
}

/** A sign in front of the figure, instead of what `old` finds there; the caret stays at its place in the figure. */
function withSign({ text, start, end }: EditedText, old: RegExp, sign: string): EditedText {
  const rest = text.replace(old, '');
  const moved = (place: number) => Math.max(sign.length, place + sign.length - (text.length - rest.length));
  return { text: sign + rest, start: moved(start), end: moved(end) };
}

function withoutLast({ text, start, end }: EditedText): EditedText {
  if (start !== end) return insert({ text, start, end }, '');
  const before = text.slice(0, start);
  const kept =
    start === text.length && longUnitAtEnd.test(before)
      ? before.replace(longUnitAtEnd, '')
      : [...before].slice(0, -1).join('');
  return atCaret(kept + text.slice(start), kept.length);
}
