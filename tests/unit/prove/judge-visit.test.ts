import { describe, expect, test } from 'vitest';
import type { Cause } from '../../../src/kernel/vocabulary.ts';
import type { Decision } from '../../../src/visit/guide/decision.ts';
import { missedBars } from '../../prove/field/bars.ts';
import { type FieldResult, judgeVisit } from '../../prove/field/judge-visit.ts';
import type { FieldOutcome } from '../../prove/field/play-field.ts';

const nothing = { suspect: [], good: [], open: [], baseline: [] };

const suspecting = (one: Decision): Decision => ({
  ...one,
  suspect: [{ part: 'motor', reasons: ['isolation-suspect'] }],
});

const decision = (
  kind: Decision['kind'],
  parts: Decision['replace'][number]['part'][] = [],
  possible: Cause[] = [],
): Decision => ({ kind, replace: parts.map((part) => ({ part, proofs: [] })), ...nothing, possible }) as never;

type Truth = Parameters<typeof judgeVisit>[0];
const truth = (bad: Truth['bad'], cause: Cause, every = 1, feel: Truth['feel'] = 'free'): Truth => ({
  bad,
  cause,
  feel,
  trips: [{ circuit: 'motor', moment: 'on-enable', every }],
});
const badCable = truth(['motor-cable'], 'cable-insulation');
const tuning = truth([], 'tuning', 0.5);

describe('what a decision is worth', () => {
  test.each<[FieldResult, Truth, Decision]>([
    ['proven', badCable, decision('replace', ['motor-cable'])],
    ['sound-proven', badCable, decision('replace', ['motor-cable', 'drive'])],
    ['sound-proven', tuning, decision('replace', ['drive'])],
    ['missed-beside', truth(['motor', 'drive'], 'output-stage'), decision('replace', ['drive'])],
    ['by-exclusion', tuning, decision('inconclusive', ['drive'])],
    ['by-exclusion', truth(['drive'], 'drive-control'), decision('inconclusive', ['drive'])],
    ['rightly-open', badCable, decision('undecided', [], ['load', 'cable-insulation'])],
    ['open', badCable, decision('undecided', [], ['load'])],
    ['nothing-named', tuning, decision('inconclusive', [], ['tuning'])],
    ['open', tuning, decision('inconclusive', [], ['load'])],
    ['sound-suspect', tuning, suspecting(decision('undecided', [], ['tuning']))],
    ['false-no-fault', tuning, decision('no-fault-found', [], ['tuning'])],
    ['false-no-fault', badCable, decision('no-fault-found')],
    ['concluded', truth([], 'interference', 0), decision('no-fault-found')],
    ['concluded', truth([], 'load', 0.7, 'stiff'), decision('mechanical')],
    ['open', badCable, decision('mechanical')],
  ])('%s', (result, axis, end) => {
    expect(judgeVisit(axis, end)).toBe(result);
  });
});

describe('the bars', () => {
  const visits = (counts: Partial<Record<FieldResult, number>>, unsafe = 0): FieldOutcome[] =>
    Object.entries(counts).flatMap(([result, count]) =>
      Array.from({ length: count }, (_, at) => ({ result, unsafe: at < unsafe ? ['axis-fell'] : [] }) as never),
    );
  const good = {
    proven: 48,
    concluded: 4,
    'nothing-named': 6,
    'rightly-open': 38,
    'false-no-fault': 3,
    'sound-proven': 1,
  };

  test('are met to the point', () => {
    expect(missedBars(visits(good))).toEqual([]);
  });

  test.each<[string, FieldOutcome[]]>([
    ['no unsafe step', visits(good, 1)],
    ['a sound part proven bad', visits({ ...good, 'rightly-open': 37, 'sound-proven': 2 })],
    ['no part named by exclusion', visits({ ...good, 'rightly-open': 37, 'by-exclusion': 1 })],
    ['a false “no fault found”', visits({ ...good, 'rightly-open': 37, 'false-no-fault': 4 })],
    ['right in at least', visits({ ...good, proven: 47, 'rightly-open': 39 })],
  ])('%s', (start, outcomes) => {
    const missed = missedBars(outcomes);
    expect(missed).toHaveLength(1);
    expect(missed[0]).toContain(start);
  });
});
