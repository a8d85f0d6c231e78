import { describe, expect, test } from 'vitest';
import { finalSummary } from '../../../../src/library/lessons/final-summary.ts';
import { feedback } from '../../../../src/practice/case/feedback.ts';
import { caseResult } from '../../../../src/practice/words/case-result.ts';
import { insulation, leadsOff, measure, peOff, run, safe } from './support.ts';

const proven = () =>
  feedback(run('short-lower-V', [...safe, leadsOff, measure('ohms', 'drive.V', 'DC-')]), {
    kind: 'replace',
    parts: ['drive'],
  });

describe('how a case ended', () => {
  test('safe and proven: what was left out is still named', () => {
    expect(caseResult(proven())).toEqual({
      word: 'Right',
      right: true,
      unsafe: [],
      unproven: ['Left out: Winding resistance.', 'Left out: Insulation of motor and cable.'],
      unnecessary: [],
    });
  });

  test('an unsafe act is named once, and so is the sound part', () => {
    const done = run('frame-U', [
      ...safe,
      insulation('cable.drive.U', 'ground'),
      leadsOff,
      insulation('drive.U', 'ground'),
    ]);
    const result = caseResult(feedback(done, { kind: 'replace', parts: ['motor-cable'] }));
    expect(result.right).toBe(false);
    expect(result.unsafe).toHaveLength(1);
    expect(result.unsafe[0]).toContain('The insulation tester reached the drive.');
    expect(result.unproven).toContain('Named, and sound: motor cable.');
    expect(result.unproven).toContain('Bad, and not named: motor.');
  });

  test('what showed nothing is unnecessary', () => {
    const again = insulation('cable.drive.U', 'ground');
    const done = run('nuisance', [...safe, measure('ohms', 'DC+', 'drive.U'), leadsOff, peOff, again, again]);
    const { unnecessary } = caseResult(feedback(done, { kind: 'nothing' }));
    expect(unnecessary).toHaveLength(2);
    expect(unnecessary).toContain('Measured again with nothing changed.');
  });
});

describe('the result of six cases', () => {
  const good = { word: 'Right', right: true, unsafe: [], unproven: [], unnecessary: [] };

  test('none decided says nothing', () => {
    expect(finalSummary([undefined, undefined])).toEqual([]);
  });

  test('some decided are counted, and nothing is concluded', () => {
    expect(finalSummary([good, undefined])).toEqual([
      '1 of 2 cases decided.',
      'Nothing was unsafe.',
      'Each decision was right and proven.',
      'Nothing was unnecessary.',
    ]);
  });

  test('one unsafe act spoils the set, though every decision was right', () => {
    const text = finalSummary([good, { ...good, unsafe: ['Hands on live conductors.'] }]).join(' ');
    expect(text).toContain('Unsafe in 1 case.');
    expect(text).not.toContain('You decide on parts by proof');
    expect(finalSummary([good, good]).join(' ')).toContain('You decide on parts by proof');
  });

  test('a right guess is not proven, and a long way is no fault', () => {
    const guess = { ...good, word: 'Right by luck', right: false };
    expect(finalSummary([good, guess]).join(' ')).toContain('not proven in 1 case.');
    expect(finalSummary([good, { ...good, unnecessary: ['x'] }]).join(' ')).toContain('You decide on parts by proof');
  });
});
