import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { parseReading } from '../../../../src/kernel/reading/parse-reading.ts';
import { keypadLayout, type TypingKey } from '../../../../src/ui/keypad/keys.ts';
import { typeKey } from '../../../../src/ui/keypad/type-key.ts';
import { runs } from '../../../support/runs.ts';

const { units, digits, signs } = keypadLayout('resistance', ['mΩ', 'Ω', 'kΩ', 'MΩ', 'GΩ'], '.');
const keys: Record<string, TypingKey> = {
  ...Object.fromEntries([...units, ...digits, ...signs].flatMap((one) => (one ? [[one.cap, one.key]] : []))),
  '⌫': { kind: 'delete' },
  '−': { kind: 'minus' },
};

/** `|` is the caret, `[` and `]` the ends of a selection. */
function typed(from: string, caps: string): string {
  const start = from.search(/[|[]/);
  const plain = from.replace(/[|[\]]/g, '');
  const end = from.includes(']') ? from.indexOf(']') - 1 : start;
  let edited = { text: plain, start, end };
  for (const cap of caps.split(' ')) {
    const key = keys[cap];
    if (key === undefined) throw new Error(`no key ${cap}`);
    edited = typeKey(edited, key);
  }
  return `${edited.text.slice(0, edited.start)}|${edited.text.slice(edited.end)}`;
}

describe('keys of a keypad', () => {
  it.each([
    ['digits and a unit', '|', '4 5 0 kΩ', '450k|'],
    ['a letter as decimal mark', '|', '4 kΩ 7', '4k7|'],
    ['the same amid digits', '4|7', 'MΩ', '4M|7'],
    ['ohms', '|', '0 . 4 Ω', '0.4Ω|'],
    ['milliohms in full, since m alone is asked about', '|', '8 4 2 mΩ', '842 mΩ|'],
    ['another unit instead of the one at the end', '450k|', 'MΩ', '450M|'],
    ['the same after a unit that the row gave', '460 kΩ|', 'MΩ', '460M|'],
    ['the same from amid the digits', '4|50k', 'Ω', '450Ω|'],
    ['over-range', '|', 'OL', 'OL|'],
    ['over-range instead of a figure', '45|', 'OL', 'OL|'],
    ['a figure instead of over-range', 'OL|', '4', '4|'],
    ['a bound before the figure', '|', '> 7 0 0 MΩ', '>700M|'],
    ['a bound after the figure', '700M|', '>', '>700M|'],
    ['a bound with the caret in the figure', '7|00M', '>', '>7|00M'],
    ['the other bound', '>7|00M', '<', '<7|00M'],
    ['the same bound again changes nothing', '>700M|', '>', '>700M|'],
    ['a bound instead of over-range', 'OL|', '>', '>|'],
    ['a minus, and back', '|', '− 5 −', '5|'],
    ['a minus with the caret in the figure', '1|5', '−', '-1|5'],
    ['a digit at the caret', '4|0k', '5', '45|0k'],
    ['a digit instead of the selection', '4[50]k', '7', '47|k'],
    ['a digit instead of all', '[450k]', '7', '7|'],
    ['one mark only', '0.4|', '.', '0.4|'],
    ['a mark instead of a selected one', '0[.4]', '.', '0.|'],
    ['no unit before a figure', '|', 'kΩ', '|'],
    ['no unit for over-range', 'OL|', 'kΩ', 'OL|'],
    ['delete at the caret', '45|0k', '⌫', '4|0k'],
    ['delete the selection', '4[50]k', '⌫', '4|k'],
    ['delete a letter', '450k|', '⌫', '450|'],
    ['delete a whole unit', '842 mΩ|', '⌫', '842|'],
    ['delete what the row gave', '460 kΩ|', '⌫', '460|'],
    ['delete a digit amid a group', '1 450|', '⌫', '1 45|'],
    ['delete over-range', 'OL|', '⌫', '|'],
    ['delete nothing', '|450', '⌫', '|450'],
    ['delete a bound', '>|', '⌫', '|'],
  ])('%s: %s, %s', (_, from, caps, expected) => {
    expect(typed(from, caps)).toBe(expected);
  });
});

test('whatever is pressed, the caret stays in the text, and the text reads or is asked about', () => {
  const all = Object.values(keys);
  fc.assert(
    fc.property(fc.array(fc.nat(all.length - 1), { maxLength: 30 }), (pressed) => {
      let edited = { text: '', start: 0, end: 0 };
      for (const index of pressed) {
        edited = typeKey(edited, all[index] as TypingKey);
        expect(edited.start).toBe(edited.end);
        expect(edited.start).toBeGreaterThanOrEqual(0);
        expect(edited.start).toBeLessThanOrEqual(edited.text.length);
      }
      const result = parseReading(edited.text, 'resistance');
      if (!result.ok) expect(result.error.message).not.toBe('');
    }),
    { numRuns: runs },
  );
});
