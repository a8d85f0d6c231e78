import { describe, expect, test } from 'vitest';
import { feedback } from '../../../src/practice/feedback.ts';
import { Session } from '../../../src/practice/session.ts';
import { faultIds } from '../../../src/simulator/faulted-axis.ts';
import { settledText } from '../../../src/texts/practice-feedback.ts';
import { insulation, leadsOff, measure, peOff, safe, session, windingCelsius } from './support.ts';

test('a right decision by a safe way: the readings that settled it, and what was left out', () => {
  const done = session('short-lower-V', [...safe, leadsOff, measure('ohms', 'drive.V', 'DC-')]);
  const told = feedback(done, { kind: 'replace', parts: ['drive'] });
  expect(told.judgement).toBe('right');
  expect(told.unsafe).toEqual([]);
  expect(told.truth).toEqual({ label: 'lower switch V shorted', bad: ['drive'] });
  expect(told.path.slice(0, 4)).toEqual(['find-drive', 'symptom', 'support-axis', 'lockout-1']);
  expect(told.leftOut).toEqual(['insulation', 'winding']);
  const [bridge] = told.settled;
  expect(bridge?.step).toBe('bridge');
  expect(bridge?.findings.map((finding) => settledText('bridge', finding)).join()).toMatch(/DC− to V reads .* short/);
});

test('an unsafe way is told by its acts, and the drive that was hurt with it', () => {
  const done = session('frame-U', [
    ...safe,
    insulation('cable.drive.U', 'ground'),
    leadsOff,
    insulation('drive.U', 'ground'),
  ]);
  const told = feedback(done, { kind: 'replace', parts: ['motor', 'drive'] });
  expect(told.unsafe).toEqual([{ code: 'tester-on-drive', at: [7, 9] }]);
  expect(told.hurtDrive).toBe(true);
  expect(told.over).toEqual([]);
  // The path and its readings are those of the axis as it was found.
  expect(told.decision.replace.map(({ part }) => part)).toEqual(['motor']);
});

test('hook-ups that tell nothing, repeats, and measurements that the case does not need', () => {
  const again = insulation('cable.drive.U', 'ground');
  const through = measure('ohms', 'DC+', 'drive.U');
  const done = session('nuisance', [...safe, through, leadsOff, peOff, again, again]);
  done.do({ act: 'join', joint: 'motor-plug', on: false });
  done.do(insulation('motor.U', 'motor.frame'));
  const told = feedback(done, { kind: 'nothing' });
  expect(told.unneeded).toEqual([
    { code: 'through-the-drive', at: [7] },
    { code: 'again', at: [11] },
  ]);
});

describe('every fault can be told at the end', () => {
  test.each(faultIds)('%s', (fault) => {
    const idle = new Session({ fault, seed: 5, windingCelsius });
    const told = feedback(idle, { kind: 'undecided' });
    expect(told.path.length).toBeGreaterThan(5);
    // Nothing was measured: to leave it open is never simply right.
    expect(['unproven', 'could-be-decided']).toContain(told.judgement);
    for (const { step, findings } of told.settled) {
      for (const finding of findings) expect(settledText(step, finding)).not.toBe('');
    }
  });
});
