import { expect, test } from 'vitest';
import { nameOf, namesIn } from '../../../../src/search/box/whole-names.ts';

const site = ['surge test', 'PE', 'brake not releasing', 'bus capacitor', 'what to bring'].map(nameOf);
const names = (query: string) => namesIn(query, (name) => site.includes(name));

test.each([
  ['surge test', 'surge test'],
  ['Surge tests?', 'surge test'],
  ['the surge test', 'surge test'],
  ['what is PE', 'PE'],
  ['what does PE mean?', 'PE'],
  ['what to bring', 'what to bring'],
  ['my brake not releasing', 'brake not releasing'],
])('“%s” names %s', (query, name) => {
  expect(names(query)).toEqual([nameOf(name)]);
});

test.each(['surge', 'bus capacitor of the lift axis is hot', 'test the surge', ''])('“%s” names nothing', (query) => {
  expect(names(query)).toEqual([]);
});
