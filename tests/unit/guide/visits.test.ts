import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exportVisit } from '../../../src/record/export-visit.ts';
import { readVisitText } from '../../../src/record/read-visit.ts';
import type { VisitRecord } from '../../../src/record/visit-schema.ts';
import { evaluate } from '../../../src/visit/evaluate.ts';
import { root } from '../../tools/paths.ts';
import { decisions } from '../../visits/decisions.ts';

const folder = join(root, 'tests/visits');
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.replace(/\.json$/, ''));
const textOf = (name: string) => readFileSync(join(folder, `${name}.json`), 'utf8');

function load(name: string): VisitRecord {
  const read = readVisitText(textOf(name));
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read)}`);
  return read.value;
}

it('each visit has its decision stated beside it, and there are at least 25 complete ones', () => {
  expect(names.sort()).toEqual(Object.keys(decisions).sort());
  expect(Object.values(decisions).filter(({ decision }) => decision !== undefined).length).toBeGreaterThanOrEqual(25);
});

describe.each(names)('%s', (name) => {
  const visit = load(name);
  const expected = decisions[name];
  const why = expected?.why;
  const state = evaluate(visit, visit.changedAt).guide;

  it(`${expected?.decision ?? `due: ${expected?.due}`}`, () => {
    expect(state.due, why).toBe(expected?.due);
    expect(state.decision?.kind, why).toBe(expected?.decision);
    expect(state.offPath, why).toEqual(expected?.offPath ?? []);
    const { replace = [], good = [], open = [] } = state.decision ?? {};
    expect(Object.fromEntries(replace.map(({ part, proofs }) => [part, proofs])), why).toEqual(expected?.replace ?? {});
    expect([...good].sort(), why).toEqual([...(expected?.stay ?? [])].sort());
    expect([...open].sort(), why).toEqual([...(expected?.open ?? [])].sort());
  });

  it('every form that was filled in can be read, and none was answered out of turn', () => {
    expect(Object.keys(evaluate(visit, visit.changedAt).answers).sort()).toEqual(Object.keys(visit.steps).sort());
    expect(state.path.filter(({ status }) => status === 'check-again' || status === 'problem')).toEqual([]);
  });

  it('says that it is invented', () => {
    expect(visit.site).toBe('Marrow Bay Glassworks');
    expect(visit.notes).toMatch(/^Invented: /);
  });

  it('holds what the program would export, with the decision that it leads to', () => {
    expect(JSON.parse(textOf(name))).toEqual(JSON.parse(exportVisit(visit).text));
    expect(visit.decision?.kind).toBe(expected?.decision);
  });
});
