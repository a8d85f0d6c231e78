import { describe, expect, test } from 'vitest';
import { CaseRun } from '../../../../src/practice/case/case-run.ts';
import { type Feedback, feedback } from '../../../../src/practice/case/feedback.ts';
import type { Mark } from '../../../../src/practice/case/time-line.ts';
import { faultIds } from '../../../../src/practice/simulator/faulted-axis.ts';
import { settledTexts } from '../../../../src/practice/words/feedback.ts';
import { insulation, leadsOff, measure, peOff, run, safe, windingCelsius } from './support.ts';

const marked = ({ line }: Feedback, kind: Mark['kind']) =>
  line.flatMap(({ marks }, position) =>
    marks.filter((mark) => mark.kind === kind).map((mark): [number, Mark] => [position + 1, mark]),
  );

test('a right decision in a safe way: the readings that settled it, and the steps left out', () => {
  const done = run('short-lower-V', [...safe, leadsOff, measure('ohms', 'drive.V', 'DC-')]);
  const told = feedback(done, { kind: 'replace', parts: ['drive'] });
  expect(told.judgement).toBe('right');
  expect(marked(told, 'unsafe')).toEqual([]);
  expect(told.truth).toEqual({ label: 'lower transistor V shorted', bad: ['drive'] });
  expect(told.way.slice(0, 4).map(({ step }) => step)).toEqual(['find-drive', 'symptom', 'support-axis', 'lockout-1']);
  expect(told.way.flatMap(({ step, leftOut }) => (leftOut ? [step] : []))).toEqual(['winding', 'insulation']);
  const settling = told.way.flatMap(({ settled }) => settled ?? []);
  expect(settling.map(({ step }) => step)).toEqual(['bridge']);
  expect(settling.flatMap(settledTexts).join()).toMatch(/DC− to V reads .* short/);
  expect(told.line.at(-1)?.marks).toEqual([{ kind: 'told', step: 'bridge', settles: true }]);
});

test('unsafe acts are listed, and the damaged drive with them', () => {
  const done = run('frame-U', [
    ...safe,
    insulation('cable.drive.U', 'ground'),
    leadsOff,
    insulation('drive.U', 'ground'),
  ]);
  const told = feedback(done, { kind: 'replace', parts: ['motor', 'drive'] });
  expect(marked(told, 'unsafe')).toEqual([
    [7, { kind: 'unsafe', code: 'tester-on-drive' }],
    [9, { kind: 'unsafe', code: 'tester-on-drive', first: 7 }],
  ]);
  expect(told.hurtDrive).toBe(true);
  expect(told.over).toEqual([]);
  // The path and its readings belong to the axis as it was found.
  expect(told.decision.replace.map(({ part }) => part)).toEqual(['motor']);
});

test('hook-ups that show nothing, repeats, and measurements that the case does not need', () => {
  const again = insulation('cable.drive.U', 'ground');
  const through = measure('ohms', 'DC+', 'drive.U');
  const done = run('nuisance', [...safe, through, leadsOff, peOff, again, again]);
  done.do({ act: 'join', joint: 'motor-plug', on: false });
  done.do(insulation('motor.U', 'motor.frame'));
  const told = feedback(done, { kind: 'nothing' });
  expect(marked(told, 'told-nothing')).toEqual([
    [7, { kind: 'told-nothing', code: 'through-the-drive' }],
    [11, { kind: 'told-nothing', code: 'again' }],
  ]);
});

describe('every fault gets feedback', () => {
  test.each(faultIds)('%s', (fault) => {
    const idle = new CaseRun({ fault, seed: 5, windingCelsius });
    const told = feedback(idle, { kind: 'undecided' });
    expect(told.way.length).toBeGreaterThan(5);
    // Nothing was measured: leaving it open is never simply right.
    expect(['unproven', 'could-be-decided']).toContain(told.judgement);
    for (const { settled } of told.way) {
      for (const text of settled === undefined ? [] : settledTexts(settled)) expect(text).not.toBe('');
    }
  });
});

test('preparations have no mark, and measurements that this case does not need have their own', () => {
  const joined = insulation('cable.drive.U', 'ground');
  const done = run('short-lower-V', [...safe, leadsOff, peOff, joined]);
  done.do({ act: 'join', joint: 'motor-plug', on: false });
  done.do(insulation('motor.U', 'motor.frame'));
  const told = feedback(done, { kind: 'replace', parts: ['drive'] });
  const kinds = told.line.map(({ entry, marks }) => [entry.action.act, marks.map(({ kind }) => kind)]);
  expect(kinds).toContainEqual(['lock-out', []]);
  expect(kinds.slice(-3)).toEqual([
    ['measure', ['told']],
    ['join', []],
    ['measure', ['not-needed']],
  ]);
});
