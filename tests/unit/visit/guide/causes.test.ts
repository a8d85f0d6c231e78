import { describe, expect, it } from 'vitest';
import type { Cause, Symptom } from '../../../../src/kernel/vocabulary.ts';
import {
  atRest,
  bentSteady,
  everyCause,
  likelyAt,
  peSound,
  possibleCauses,
} from '../../../../src/visit/guide/causes.ts';
import { bend, idle, insulationIs, isolationIs, retry, strip, trips } from './support/answers.ts';
import { insulation, insulations, isolations } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const possible = (...given: Given[]) => possibleCauses(visitOf(given));
/** What these answers exclude, in the order of all causes. */
const excluded = (...given: Given[]) => everyCause.filter((cause) => !possible(...given).includes(cause));

describe('what a moment makes likely', () => {
  it.each<[when: Symptom, first: Cause, count: number, last: Cause]>([
    ['control-off', 'feedback-supply', 11, 'winding-insulation'],
    ['on-enable', 'output-stage', 15, 'feedback-supply'],
    ['on-acceleration', 'load', 18, 'other-axis'],
    ['on-braking', 'braking-circuit', 11, 'other-axis'],
    ['position-or-cable', 'moving-cable', 9, 'magnets'],
    ['when-hot', 'winding-insulation', 11, 'moisture'],
    ['now-and-then', 'contact', 12, 'protective-conductor'],
  ])('%s: first %s, %i in all', (when, first, count, last) => {
    const likely = likelyAt(when);
    expect([likely[0], likely.length, likely.at(-1)]).toEqual([first, count, last]);
    expect(likely.filter((cause) => !everyCause.includes(cause))).toEqual([]);
    expect(new Set(likely).size).toBe(count);
  });

  it('comes first, and everything else stays possible', () => {
    for (const when of ['control-off', 'on-enable', 'when-hot'] as const) {
      const list = possible(trips(when));
      expect(list.slice(0, likelyAt(when).length)).toEqual(likelyAt(when));
      expect([...list].sort()).toEqual([...everyCause].sort());
    }
  });

  it('is nothing without a moment', () => {
    expect(possible()).toEqual(everyCause);
    expect(possible(['symptom', { when: 'unknown', gravityLoaded: 'no' }])).toEqual(everyCause);
  });

  it('that went away with the feedback begins with what feedback has', () => {
    const list = possible(trips('now-and-then'), retry('retry-feedback-off', 'no-trip'));
    expect(list.slice(0, 5)).toEqual(['feedback-supply', 'contact', 'feedback-signal', 'moisture', 'drive-control']);
    expect(list).toHaveLength(everyCause.length);
  });
});

describe('every cause', () => {
  it('is named once', () => {
    expect(new Set(everyCause).size).toBe(24);
    expect(everyCause).toHaveLength(24);
    expect(everyCause.every((cause) => /^[a-z]+(-[a-z]+)*$/.test(cause))).toBe(true);
  });
});

const moving: Cause[] = ['tuning', 'commutation', 'load', 'magnets'];
const beyondMotor: Cause[] = [
  ...(['cable-insulation', 'moving-cable', 'output-filter', 'winding-insulation', 'winding-turns'] as const),
  ...(['protective-conductor', ...moving] as const),
];
const order = (list: readonly Cause[]) => everyCause.filter((cause) => list.includes(cause));

describe('what a reading excludes', () => {
  const rows: [what: string, given: Given[], excluded: Cause[]][] = [
    ['nothing', [trips('on-enable')], []],
    [
      'it trips without feedback',
      [retry('retry-feedback-off', 'trips')],
      [...moving, 'feedback-supply', 'feedback-signal'],
    ],
    ['it does not', [retry('retry-feedback-off', 'no-trip')], []],
    ['another message comes', [retry('retry-feedback-off', 'other-message')], []],
    ['it trips without motor', [retry('retry-leads-off', 'trips')], beyondMotor],
    ['it does not trip without motor', [retry('retry-leads-off', 'no-trip')], []],
    ['it trips stripped, with something left on', [strip('some-left'), retry('retry-stripped', 'trips')], beyondMotor],
    [
      'it trips with all off',
      [strip(), retry('retry-stripped', 'trips')],
      [...beyondMotor, 'brake', 'braking-circuit', 'other-axis', 'idle-core'],
    ],
    ['all off, and no trip', [strip(), retry('retry-stripped', 'no-trip')], []],
    ['it trips stripped, and nobody noted what was off', [retry('retry-stripped', 'trips')], beyondMotor],
    ['PE not read', [insulationIs(insulation('> 700M | > 700M | > 700M', ''))], []],
    ['PE sound', [insulationIs(insulations.good)], ['protective-conductor']],
    ['PE broken', [insulationIs(insulations.peBroken)], []],
    ['PE sound once, and broken separately', [insulationIs(insulations.good), isolationIs(isolations.peBroken)], []],
    ['a cable good alone, at rest', [trips('on-enable'), isolationIs(isolations.bothGood)], ['cable-insulation']],
    ['a cable good alone, of a trip that moves', [trips('on-acceleration'), isolationIs(isolations.bothGood)], []],
    ['a bad cable', [trips('on-enable'), isolationIs(isolations.cableBad)], []],
    ['a cable without idle cores', [idle('none')], ['idle-core']],
    ['idle cores that are free', [idle('measured', '>50M')], []],
    ['a steady bend test', [trips('position-or-cable'), bend('steady')], []],
  ];
  it.each(rows)('%s', (_, given, causes) => {
    expect(excluded(...given)).toEqual(order(causes));
  });
});

it('a trip is at rest with the control off or on enable', () => {
  const moments: Symptom[] = [
    ...(['control-off', 'on-enable', 'on-acceleration', 'on-braking'] as const),
    ...(['position-or-cable', 'when-hot', 'now-and-then'] as const),
  ];
  expect(moments.filter((when) => atRest(visitOf([trips(when)])))).toEqual(['control-off', 'on-enable']);
  expect(atRest(visitOf([]))).toBe(false);
});

it('a cable is steady if it was bent twice and nothing changed', () => {
  const steady = (...given: Given[]) => bentSteady(visitOf(given));
  expect([steady(bend('steady')), steady(bend('steady', false)), steady(bend('opens')), steady()]).toEqual([
    ...[true, false, false, false],
  ]);
});

it('PE is sound if it reads what it should, and was read', () => {
  const sound = (...given: Given[]) => peSound(visitOf(given));
  expect(sound(insulationIs(insulations.good))).toBe(true);
  expect(sound(insulationIs(insulations.peBroken))).toBe(false);
  expect(sound(isolationIs(isolations.bothGood))).toBe(false);
  expect(sound()).toBe(false);
});
