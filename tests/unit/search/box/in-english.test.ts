import { expect, test } from 'vitest';
import { foreignWords } from '../../../../src/search/box/foreign-words.ts';
import { inEnglish } from '../../../../src/search/box/in-english.ts';
import { Vocabulary } from '../../../../src/search/box/spelling.ts';

const site = new Vocabulary(['insulation', 'motor', 'brake', 'isolation', 'condensation', 'multimeter']);

const rows = foreignWords
  .trim()
  .split('\n')
  .map((row) => row.split(' | '));

test('the table has the commonest terms, each in English and six languages', () => {
  expect(rows.length - 1).toBeGreaterThanOrEqual(40);
  for (const row of rows) {
    expect(row, row[0]).toHaveLength(7);
    for (const words of row) expect(words.trim(), row[0]).not.toBe('');
  }
});

test('every term leads to the English words of its row, or to those of a row that has it too', () => {
  for (const [english = '', ...languages] of rows.slice(1)) {
    for (const term of languages.flatMap((list) => list.split(', '))) {
      const meant = inEnglish(term, new Vocabulary([]));
      const others = rows.filter((row) => row.some((list) => list.split(', ').includes(term))).map(([first]) => first);
      expect([english, ...others], term).toContain(meant);
    }
  }
});

// Recalled from memory, as the trade uses them.
test.each([
  ['Kurzschluss', 'short circuit'],
  ['KURZSCHLUß', 'short circuit'],
  ['Pruefspannung', 'test voltage'],
  ['prufspannung', 'test voltage'],
  ['Bremse löst nicht', 'brake not releasing'],
  ['1 MOhm Isolationswiderstand ok?', '1 MOhm insulation resistance ok'],
  ['ausencia de tension', 'proving dead'],
  ['el freno no abre', 'brake not releasing'],
  ['résistance d’isolement 0,5 MΩ', 'insulation resistance 0,5 MΩ'],
  ['hamulec silnika', 'holding brake'],
  ['ZWARCIE', 'short circuit'],
  ['KISA DEVRE', 'short circuit'],
  ['SÜRÜCÜ', 'servo drive'],
  ['sürücüsü', 'servo drive'],
  ['电机绝缘电阻低', 'motor insulation resistance'],
  ['编码器电缆', 'encoder cable'],
])('“%s” is “%s”', (typed, english) => {
  expect(inEnglish(typed, site)).toBe(english);
});

test.each(['isolation', 'condensation', 'brake motor', 'xyzzyq', '', 'bearing in mind'])('“%s” stays', (typed) => {
  expect(inEnglish(typed, site)).toBe(null);
});

test('the beginning of a term is enough while somebody types, if it is no English word', () => {
  expect(inEnglish('Kurzsch', site)).toBe('short circuit');
  expect(inEnglish('condensa', site)).toBe(null);
});
