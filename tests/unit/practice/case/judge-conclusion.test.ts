import { describe, expect, test } from 'vitest';
import type { Part } from '../../../../src/kernel/vocabulary.ts';
import type { Conclusion, Judgement } from '../../../../src/practice/case/conclusion.ts';
import { judgeConclusion } from '../../../../src/practice/case/judge-conclusion.ts';
import type { Purpose } from '../../../../src/practice/case/purpose.ts';
import type { Decision } from '../../../../src/visit/guide/decision.ts';

type Guide = Pick<Decision, 'kind' | 'replace'>;

const replaced = (...parts: Part[]): Guide => ({
  kind: 'replace',
  replace: parts.map((part) => ({ part, proofs: [] })),
});
const open: Guide = { kind: 'undecided', replace: [] };
const noFault: Guide = { kind: 'no-fault-found', replace: [] };
/** What the sound path needs in all these cases. */
const needed: Purpose[] = ['bridge', 'insulation'];
const names = (...parts: Part[]): Conclusion => ({ kind: 'replace', parts });
const nothing: Conclusion = { kind: 'nothing' };
const undecided: Conclusion = { kind: 'undecided' };

const cases: [title: string, Conclusion, bad: Part[], Guide, measured: Purpose[], Judgement][] = [
  ['the bad part, measured', names('drive'), ['drive'], replaced('drive'), ['bridge'], 'right'],
  ['the bad part, not measured', names('drive'), ['drive'], replaced('drive'), ['insulation'], 'unproven'],
  ['a sound part', names('motor'), ['drive'], replaced('drive'), ['isolation'], 'wrong-parts'],
  [
    'a sound part beside the bad one',
    names('drive', 'motor'),
    ['drive'],
    replaced('drive'),
    ['bridge'],
    'sound-part-named',
  ],
  ['one of two', names('drive'), ['drive', 'motor'], replaced('drive', 'motor'), ['bridge'], 'bad-part-missed'],
  [
    'two, one of them proven',
    names('drive', 'motor'),
    ['drive', 'motor'],
    replaced('drive', 'motor'),
    ['bridge'],
    'unproven',
  ],
  [
    'two, both proven',
    names('drive', 'motor'),
    ['drive', 'motor'],
    replaced('drive', 'motor'),
    ['bridge', 'isolation'],
    'right',
  ],
  ['what only a specialist can tell, named', names('motor'), ['motor'], open, ['winding', 'winding-motor'], 'guessed'],
  ['what only a specialist can tell, left open', undecided, ['motor'], open, ['bridge', 'insulation'], 'right'],
  ['what only a specialist can tell, nothing measured', undecided, ['motor'], open, [], 'unproven'],
  ['what the measurements tell, left open', undecided, ['motor'], replaced('motor'), ['isolation'], 'could-be-decided'],
  ['a healthy axis, measured', nothing, [], noFault, ['bridge', 'insulation'], 'right'],
  ['a healthy axis, half measured', nothing, [], noFault, ['bridge'], 'unproven'],
  ['a healthy axis, a motor named', names('motor'), [], noFault, ['isolation'], 'sound-part-named'],
  ['a bad part, and nothing named', nothing, ['drive'], replaced('drive'), ['bridge'], 'bad-part-missed'],
  ['a fault that nobody can find today', nothing, ['drive'], noFault, ['bridge', 'insulation'], 'right'],
  ['a fault for a specialist, and nothing named', nothing, ['motor'], open, ['bridge'], 'bad-part-missed'],
];

describe('a conclusion is compared with the truth, the guide and the measurements', () => {
  test.each(cases)('%s', (_, conclusion, bad, guide, measured, judgement) => {
    expect(
      judgeConclusion(conclusion, { bad, hurtDrive: false, wet: false }, guide, new Set(measured), needed).judgement,
    ).toBe(judgement);
  });
});

test('water left in a connector makes the decision wrong', () => {
  const left = judgeConclusion(nothing, { bad: [], hurtDrive: false, wet: true }, open, new Set(needed), needed);
  expect(left.judgement).toBe('left-wet');
});

test('sound parts that were named and bad parts that were missed are listed', () => {
  const { over, missed } = judgeConclusion(
    names('motor', 'drive'),
    { bad: ['drive', 'motor-cable'], hurtDrive: false, wet: false },
    open,
    new Set(),
    needed,
  );
  expect(over).toEqual(['motor']);
  expect(missed).toEqual(['motor-cable']);
});

test('a drive that the person has damaged may be named', () => {
  const guide = replaced('motor');
  const measured = new Set<Purpose>(['isolation', 'bridge']);
  expect(
    judgeConclusion(names('motor', 'drive'), { bad: ['motor'], hurtDrive: true, wet: false }, guide, measured, needed)
      .over,
  ).toEqual([]);
  expect(
    judgeConclusion(names('motor', 'drive'), { bad: ['motor'], hurtDrive: false, wet: false }, guide, measured, needed)
      .over,
  ).toEqual(['drive']);
});
