import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withoutSentences } from '../../../src/astro/limits-for-readers.ts';
import { limit, limitIds } from '../../../src/kernel/limits.ts';

const folder = 'content/limits';
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const short = Object.assign(
  {},
  ...files.map((name) => JSON.parse(withoutSentences(readFileSync(`${folder}/${name}`, 'utf8'))).limits),
);

test('scripts get every limit with all that a verdict uses of it', () => {
  expect(Object.keys(short).sort()).toEqual([...limitIds].sort());
  for (const id of limitIds) {
    const { label, status, source, clause, recalled, unit, inputUnit, value, range, points, constants } = limit(id);
    const used = { label, status, source, clause, recalled, unit, inputUnit, value, range, points, constants };
    expect(short[id]).toEqual(JSON.parse(JSON.stringify(used)));
  }
});
