import { describe, expect, it } from 'vitest';
import {
  bridgeConvicts,
  isolationConvicts,
  jointExcluded,
  windingConvicts,
} from '../../../../src/visit/guide/convictions.ts';
import { againstPower } from '../../../../src/visit/guide/power.ts';
import { provenBad } from '../../../../src/visit/guide/proofs.ts';
import { afterHandTest, measureAfter, wantsHandTest } from '../../../../src/visit/guide/routes.ts';
import { suspected } from '../../../../src/visit/guide/suspicions.ts';
import { staysAway, triesNeededIn, tripsEveryTime } from '../../../../src/visit/guide/tries.ts';
import { retry, trips } from './support/answers.ts';
import { visitOf } from './support/visit.ts';

const nothing = visitOf([]);

describe('before any answer', () => {
  it('nothing is proven and nothing suspect', () => {
    expect(provenBad(nothing)).toEqual([]);
    expect(suspected(nothing)).toEqual([]);
    expect([bridgeConvicts(nothing), windingConvicts(nothing), jointExcluded(nothing)]).toEqual([false, false, false]);
    expect([isolationConvicts(nothing, 'cable'), isolationConvicts(nothing, 'motor')]).toEqual([false, false]);
  });

  it('nothing is powered: nobody has looked at the drive', () => {
    expect(againstPower(nothing, 'retry-feedback-off')).toEqual(['drive-damaged']);
    expect(againstPower(nothing, 'retry-all')).toEqual(['drive-damaged', 'not-passed']);
  });

  it('the way is that of a trip that needs motion', () => {
    expect(wantsHandTest(nothing, nothing)).toBe(true);
    expect(afterHandTest(nothing, nothing)).toBe('bridge');
    expect(measureAfter('winding', nothing, nothing)).toBe('idle-cores');
  });

  it('tries show nothing', () => {
    const tried = visitOf([retry('retry-stripped', 'trips'), retry('retry-all', 'no-trip')]);
    for (const visit of [nothing, tried]) {
      expect(triesNeededIn(visit)).toBeUndefined();
      expect(tripsEveryTime(visit, 'retry-stripped')).toBe(false);
      expect(staysAway(visit, 'retry-all')).toBe(false);
    }
  });
});

describe('tries show a trip every time', () => {
  const every = (...given: Parameters<typeof visitOf>[0]) => tripsEveryTime(visitOf(given), 'retry-stripped');

  it('only if they ended with one, whatever was noted besides', () => {
    const noted = { tries: 3, trips: 3, stage: 'at-power' } as const;
    expect(every(trips('control-off'), retry('retry-stripped', 'trips', noted))).toBe(true);
    for (const result of ['no-trip', 'other-message', 'not-done'] as const)
      expect(every(trips('control-off'), retry('retry-stripped', result, noted))).toBe(false);
  });

  it('only at a stage that is known to be the same', () => {
    const [id, answer] = retry('retry-stripped', 'trips') as readonly [
      'retry-stripped',
      { stage?: unknown; result: 'trips' },
    ];
    const { stage: _stage, ...without } = answer;
    const noStage = [id, { powerAllowed: true, ...without }] as const;
    const often = { came: 5, of: 5 };
    expect(every(['symptom', { when: 'unknown', gravityLoaded: 'no', ...often }], noStage)).toBe(false);
    expect(every(trips('control-off'), noStage)).toBe(false);
  });
});
