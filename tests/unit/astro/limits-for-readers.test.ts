import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { onlyFigures, writtenLabels } from '../../../src/astro/limits-for-readers.ts';
import { limitLabels } from '../../../src/kernel/limit-labels.ts';
import { limit, limitIds } from '../../../src/kernel/limits.ts';

const folder = 'content/limits';
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const figures = Object.assign(
  {},
  ...files.map((name) => JSON.parse(onlyFigures(readFileSync(`${folder}/${name}`, 'utf8'))).limits),
);
const asText = (value: unknown) => JSON.parse(JSON.stringify(value));

test('scripts get every limit with all that a rule computes with', () => {
  expect(Object.keys(figures).sort()).toEqual([...limitIds].sort());
  for (const id of limitIds) {
    const { unit, inputUnit, value, range, points, constants } = limit(id);
    expect(figures[id]).toEqual(asText({ unit, inputUnit, value, range, points, constants }));
  }
});

test('scripts get every limit with all that a verdict says of it', async () => {
  const written = await import(`data:text/javascript,${encodeURIComponent(writtenLabels())}`);
  expect(Object.keys(written.limitLabels).sort()).toEqual([...limitIds].sort());
  for (const id of limitIds) {
    const { label, status, source, clause, recalled } = limitLabels[id];
    expect(written.limitLabels[id]).toEqual(asText({ label, status, source, clause, recalled }));
  }
});
