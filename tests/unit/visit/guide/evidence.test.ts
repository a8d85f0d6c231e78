import { describe, expect, it } from 'vitest';
import type { Damage, InspectedPart, Symptom } from '../../../../src/kernel/vocabulary.ts';
import {
  cableOrJoint,
  damageOpen,
  feedbackCableRuined,
  feedbackGone,
  goneWithoutDevice,
  insulationSettled,
  isolationClears,
  isolationLeavesOpen,
  looksBad,
  looksDamaged,
  mayBe,
  mayBePowered,
  measuredHot,
  notLookedAt,
  peBroken,
  peSpeaksAgainst,
  pointsAtCableOrMotor,
  seenDamaged,
  tripsAsAWhole,
} from '../../../../src/visit/guide/evidence.ts';
import type { VisitAnswers } from '../../../../src/visit/steps/questions.ts';
import { insulationIs, isolationIs, motorWindingIs, retry, seen, trips, windingIs } from './support/answers.ts';
import { insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const damages: Damage[] = ['nothing', 'burnt', 'chafed', 'wet', 'corroded', 'bent', 'loose', 'unseen'];
const parts: InspectedPart[] = ['drive', 'motor', 'motorCable', 'feedbackCable'];
/** With which damage of a part this holds. */
const holdsWith = (part: InspectedPart, test: (visit: VisitAnswers) => boolean) =>
  damages.filter((damage) => test(visitOf([seen({ [part]: damage })])));
const nobody = visitOf([]);

describe('what was seen', () => {
  it('only a drive that looks sound is powered, and none that nobody saw', () => {
    expect(holdsWith('drive', mayBePowered)).toEqual(['nothing']);
    expect(mayBePowered(nobody)).toBe(false);
  });

  it('is dried or mended first, unless it is burnt, or a chafed feedback cable, which prove or suspect the part', () => {
    expect(holdsWith('drive', damageOpen)).toEqual(['chafed', 'wet', 'corroded', 'bent', 'loose']);
    expect(holdsWith('feedbackCable', damageOpen)).toEqual(['wet', 'corroded', 'bent', 'loose']);
    expect(holdsWith('motor', damageOpen)).toEqual([]);
    expect(holdsWith('motorCable', damageOpen)).toEqual([]);
    expect(damageOpen(nobody)).toBe(false);
  });

  it('a feedback cable is ruined if it is burnt or chafed', () => {
    expect(holdsWith('feedbackCable', feedbackCableRuined)).toEqual(['burnt', 'chafed']);
    expect(feedbackCableRuined(nobody)).toBe(false);
  });

  it.each(parts)('%s: any damage counts, and what nobody saw looks bad but is not seen damaged', (part) => {
    const [, ...others] = damages;
    expect(holdsWith(part, (visit) => looksBad(visit, part))).toEqual(others);
    expect(holdsWith(part, (visit) => seenDamaged(visit, part))).toEqual(others.slice(0, -1));
    expect(holdsWith(part, (visit) => notLookedAt(visit).includes(part))).toEqual(['unseen']);
    expect(notLookedAt(visitOf([seen({ [part]: 'unseen' })]))).toEqual([part]);
  });

  it('says nothing before anybody looked', () => {
    expect(parts.map((part) => looksBad(nobody, part))).toEqual([false, false, false, false]);
    expect(notLookedAt(nobody)).toEqual([]);
  });

  it('motor and motor cable look damaged together', () => {
    expect(parts.map((part) => holdsWith(part, looksDamaged).length)).toEqual([0, 7, 7, 0]);
  });
});

describe('the moment', () => {
  it('may be any if nobody saw it, and is none before it was asked for', () => {
    const at = (when: Symptom | 'unknown') => visitOf([['symptom', { when, gravityLoaded: 'no' }]]);
    expect(mayBe(at('when-hot'), 'when-hot')).toBe(true);
    expect(mayBe(at('on-enable'), 'when-hot')).toBe(false);
    expect(mayBe(at('unknown'), 'when-hot')).toBe(true);
    expect(mayBe(nobody, 'when-hot')).toBe(false);
  });
});

describe('the feedback', () => {
  const holds = (test: (visit: VisitAnswers) => boolean, ...given: Given[]) => test(visitOf(given));
  const off = (result: 'trips' | 'no-trip' | 'other-message' | 'not-done') => retry('retry-feedback-off', result);
  const device = (result: 'trips' | 'no-trip' | 'other-message' | 'not-done') => retry('retry-device-end', result);

  it('has the trip gone only if there was none', () => {
    for (const result of ['trips', 'other-message', 'not-done'] as const) {
      expect(holds(feedbackGone, off(result))).toBe(false);
      expect(holds(goneWithoutDevice, off('no-trip'), device(result))).toBe(false);
      expect(holds(goneWithoutDevice, off(result), device('no-trip'))).toBe(false);
    }
    expect(holds(feedbackGone, off('no-trip'))).toBe(true);
    expect(holds(goneWithoutDevice, off('no-trip'), device('no-trip'))).toBe(true);
    expect(holds(goneWithoutDevice, off('no-trip'))).toBe(false);
    expect(holds(feedbackGone)).toBe(false);
  });
});

describe('what points at cable or motor', () => {
  const points = (...given: Given[]) => pointsAtCableOrMotor(visitOf(given));

  it.each<[what: string, given: Given[], points: boolean]>([
    ['nothing', [trips('on-acceleration'), seen()], false],
    ['the moment', [trips('position-or-cable')], true],
    ['a moment that nobody saw', [['symptom', { when: 'unknown', gravityLoaded: 'no' }]], true],
    ['a wet motor', [seen({ motor: 'wet' })], true],
    ['a cable that nobody saw', [seen({ motorCable: 'unseen' })], true],
    ['a burnt drive', [seen({ drive: 'burnt' })], false],
    ['bad through the cable, good without', [windingIs(windings.unlike), motorWindingIs(windings.alike)], true],
    ['bad through the cable', [windingIs(windings.unlike)], false],
    ['bad both ways', [windingIs(windings.unlike), motorWindingIs(windings.unlike)], false],
    ['good both ways', [windingIs(windings.alike), motorWindingIs(windings.alike)], false],
    ['it trips as a whole', [trips('on-enable'), retry('retry-all', 'trips')], true],
    ['it trips as a whole, control off', [trips('control-off'), retry('retry-all', 'trips')], false],
    ['it does not', [trips('on-enable'), retry('retry-all', 'no-trip')], false],
  ])('%s: %s', (_, given, expected) => {
    expect(points(...given)).toBe(expected);
  });

  it('bad through the cable only is the cable or the joint', () => {
    const verdicts = [windings.alike, windings.unlike, windings.between];
    const found = verdicts.map((one) =>
      verdicts.map((two) => cableOrJoint(visitOf([windingIs(one), motorWindingIs(two)]))),
    );
    expect(found).toEqual([
      [false, false, false],
      [true, false, false],
      [false, false, false],
    ]);
    expect(tripsAsAWhole(nobody)).toBe(false);
    expect(tripsAsAWhole(visitOf([retry('retry-all', 'trips')]))).toBe(true);
  });
});

describe('what the isolation says of a part', () => {
  type Row = [
    what: string,
    given: Given[],
    clears: [cable: boolean, motor: boolean],
    open: [cable: boolean, motor: boolean],
  ];
  const good = insulationIs(insulations.good);
  const joined = isolationIs(isolations.joinedGoodOnly);

  it.each<Row>([
    ['nothing, if it was not done', [good], [false, false], [false, false]],
    ['both good', [isolationIs(isolations.bothGood)], [true, true], [false, false]],
    ['one bad', [isolationIs(isolations.cableBad)], [false, true], [false, false]],
    ['one suspect', [isolationIs(isolations.motorSuspect)], [true, false], [false, false]],
    ['one not tested', [isolationIs(isolations.cableBadMotorOpen)], [false, false], [false, true]],
    ['neither tested', [isolationIs(isolations.nothingSeparated)], [false, false], [true, true]],
    ['a contradiction', [isolationIs(isolations.contradiction)], [false, false], [true, true]],
    ['joined good, where nothing points at them', [good, joined], [true, true], [false, false]],
    ['joined good without an insulation', [joined], [false, false], [false, false]],
    ['joined good, and the cable moves', [trips('position-or-cable'), good, joined], [false, false], [true, true]],
  ])('%s', (_, given, clears, open) => {
    const visit = visitOf(given);
    expect([isolationClears(visit, 'cable'), isolationClears(visit, 'motor')]).toEqual(clears);
    expect([isolationLeavesOpen(visit, 'cable'), isolationLeavesOpen(visit, 'motor')]).toEqual(open);
  });

  it('the insulation is settled by a pass', () => {
    expect(insulationSettled(visitOf([good]))).toBe(true);
    for (const one of [insulations.dead, insulations.warm]) {
      expect(insulationSettled(visitOf([insulationIs(one)]))).toBe(false);
    }
    expect(insulationSettled(nobody)).toBe(false);
  });

  it('was measured hot from a temperature on, and not without one', () => {
    const at = (celsius?: number) => measuredHot(visitOf([insulationIs(insulations.good, undefined, celsius)]), 60);
    expect([at(59.9), at(60), at(80)]).toEqual([false, true, true]);
    expect(measuredHot(nobody, 60)).toBe(false);
  });
});

describe('the protective conductor', () => {
  const pe = (...given: Given[]) => {
    const visit = visitOf(given);
    return [peBroken(visit, 'insulation'), peBroken(visit, 'isolation'), peSpeaksAgainst(visit)];
  };
  const once = insulationIs(insulations.peBroken);

  it('read once is suspect, until a closer reading finds it sound or broken', () => {
    expect(pe()).toEqual([false, false, false]);
    expect(pe(insulationIs(insulations.good))).toEqual([false, false, false]);
    expect(pe(once)).toEqual([true, false, true]);
    expect(pe(once, isolationIs(isolations.bothGood))).toEqual([true, false, false]);
    expect(pe(isolationIs(isolations.peBroken))).toEqual([false, true, true]);
    expect(pe(insulationIs(insulations.good), isolationIs(isolations.peBroken))).toEqual([false, true, true]);
    const suspect = {
      ...isolations.peBroken,
      parts: { ...isolations.peBroken.parts, protectiveConductor: 'suspect' as const },
    };
    expect(pe(isolationIs(suspect))).toEqual([false, false, true]);
  });
});
