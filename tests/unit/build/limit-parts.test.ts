import { globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { onePart } from '../../../src/build/limit-parts.ts';
import { type LimitId, limit, limitIds } from '../../../src/calc/limits.ts';

const topics = globSync('content/limits/*.json').map((file) => readFileSync(file, 'utf8'));
const limitsOf = (part: 'figure' | 'words') =>
  Object.assign({}, ...topics.map((topic) => JSON.parse(onePart(topic, part)).limits));

it('a browser has the figure of every limit, as Node has it, and nothing besides', () => {
  const figures = limitsOf('figure');
  expect(Object.keys(figures).sort()).toEqual([...limitIds].sort());
  for (const [id, figure] of Object.entries<object>(figures)) {
    expect(limit(id as LimitId)).toMatchObject(figure);
    const fields = ['value', 'range', 'points', 'constants'].filter((field) => field in figure);
    expect(fields, id).toHaveLength(1);
    expect(Object.keys(figure), id).not.toContain('note');
  }
});

it('the words of every limit come with a label, a status, a source and its mark of recall', () => {
  const words = limitsOf('words');
  expect(Object.keys(words).sort()).toEqual([...limitIds].sort());
  for (const said of Object.values<object>(words))
    expect(Object.keys(said)).toEqual(expect.arrayContaining(['label', 'status', 'source', 'recalled']));
});
