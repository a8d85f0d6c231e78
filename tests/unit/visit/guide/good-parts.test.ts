import { describe, expect, it } from 'vitest';
import type { Part, Symptom } from '../../../../src/kernel/vocabulary.ts';
import { excludedParts, measuredAsItTrips, passedParts } from '../../../../src/visit/guide/good-parts.ts';
import {
  bend,
  brake,
  bridgeIs,
  insulationIs,
  isolationIs,
  motorWindingIs,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { inputIs, inputs } from './support/inputs.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const good: Given[] = [
  ...[trips('on-enable'), seen(), bridgeIs(bridges.good)],
  ...[windingIs(windings.alike), insulationIs(insulations.good)],
];
const passed = (...given: Given[]) => passedParts(visitOf(given));

describe('parts that passed every measurement of them', () => {
  const rows: [what: string, given: Given[], passed: Part[]][] = [
    ['all of them', [], ['drive', 'motor', 'motor-cable']],
    ['a bridge that is too close', [bridgeIs(bridges.tooClose)], ['motor', 'motor-cable']],
    ['a shorted input', [inputIs(inputs.shorted)], ['motor', 'motor-cable']],
    ['an input left open', [inputIs(inputs.prechargeInside)], ['motor', 'motor-cable']],
    ['a sound input', [inputIs(inputs.sound)], ['drive', 'motor', 'motor-cable']],
    ['a wet drive', [seen({ drive: 'wet' })], ['motor', 'motor-cable']],
    ['a motor that nobody saw', [seen({ motor: 'unseen' })], ['drive', 'motor-cable']],
    ['a chafed cable', [seen({ motorCable: 'chafed' })], ['drive', 'motor']],
    ['a burnt feedback cable', [seen({ feedbackCable: 'burnt' })], ['drive', 'motor', 'motor-cable']],
    ['a bad insulation', [insulationIs(insulations.dead)], ['drive']],
    ['separated, both good', [isolationIs(isolations.bothGood)], ['drive', 'motor', 'motor-cable']],
    ['separated, the cable bad', [isolationIs(isolations.cableBad)], ['drive', 'motor']],
    ['separated, the motor bad', [isolationIs(isolations.motorBad)], ['drive', 'motor-cable']],
    ['separated, nothing known', [isolationIs(isolations.nothingSeparated)], ['drive']],
    ['a winding between the limits', [windingIs(windings.between)], ['drive', 'motor-cable']],
    ['bad through the cable', [windingIs(windings.unlike)], ['drive']],
    [
      'bad through the cable, good at the motor',
      [windingIs(windings.unlike), motorWindingIs(windings.alike)],
      ['drive', 'motor'],
    ],
    [
      'bad through the cable and at the motor',
      [windingIs(windings.unlike), motorWindingIs(windings.unlike)],
      ['drive', 'motor-cable'],
    ],
    ['unclear at the motor', [windingIs(windings.unlike), motorWindingIs(windings.between)], ['drive']],
    [
      'between the limits, good at the motor',
      [windingIs(windings.between), motorWindingIs(windings.alike)],
      ['drive', 'motor', 'motor-cable'],
    ],
  ];
  it.each(rows)('%s', (_, more, parts) => {
    expect(passed(...good, ...more)).toEqual(parts);
  });

  it('are none before anything was measured', () => {
    expect(passed()).toEqual([]);
    expect(passed(insulationIs(insulations.good))).toEqual(['motor-cable']);
  });
});

describe('a part measured as it trips', () => {
  const asItTrips = (part: Part, when: Symptom | 'unknown', ...given: Given[]) =>
    measuredAsItTrips(visitOf([['symptom', { when, gravityLoaded: 'no' }], ...given]), part);
  const at = (celsius: number) => insulationIs(insulations.good, undefined, celsius);

  it('the motor warm, if the trip comes when hot', () => {
    for (const when of ['when-hot', 'unknown'] as const) {
      expect(asItTrips('motor', when, at(20))).toBe(false);
      expect(asItTrips('motor', when, at(90))).toBe(true);
      expect(asItTrips('motor', when)).toBe(false);
    }
    expect(asItTrips('motor', 'on-enable', at(20))).toBe(true);
    expect(asItTrips('drive', 'when-hot', at(20))).toBe(true);
    expect(asItTrips('motor-cable', 'when-hot', at(20))).toBe(true);
  });

  it('the drive with its braking circuit, if the trip comes on braking', () => {
    const none: Given = ['braking', { ...(brake('')[1] as object), fitted: 'none' } as never];
    for (const when of ['on-braking', 'unknown'] as const) {
      expect(asItTrips('drive', when)).toBe(false);
      expect(asItTrips('drive', when, none)).toBe(true);
      expect(asItTrips('drive', when, brake('20 Ω | 20 Ω | >1M | OL'))).toBe(true);
      expect(asItTrips('drive', when, brake('20 Ω | 20 Ω | >1M | <5k'))).toBe(false);
      expect(asItTrips('drive', when, brake('20 Ω | 20 Ω | >1M | 5 Ω'))).toBe(false);
    }
    expect(asItTrips('drive', 'on-enable')).toBe(true);
    expect(asItTrips('motor', 'on-braking')).toBe(true);
  });

  it('the motor cable bent twice, if the trip comes at a position', () => {
    for (const when of ['position-or-cable', 'unknown'] as const) {
      expect(asItTrips('motor-cable', when)).toBe(false);
      expect(asItTrips('motor-cable', when, bend('steady'))).toBe(true);
      expect(asItTrips('motor-cable', when, bend('steady', false))).toBe(false);
    }
    expect(asItTrips('motor-cable', 'on-enable')).toBe(true);
    expect(asItTrips('drive', 'position-or-cable')).toBe(true);
    expect(asItTrips('motor', 'position-or-cable')).toBe(true);
  });
});

describe('parts that readings exclude', () => {
  const excluded = (parts: Part[], ...given: Given[]) =>
    excludedParts(visitOf(given), parts).map(({ part, by }) => [part, ...by].join(' '));
  const trip = (id: 'retry-leads-off' | 'retry-stripped' | 'retry-feedback-off', other = {}) =>
    retry(id, 'trips', other);

  it('are the good ones, by what was measured of them', () => {
    expect(excluded(['drive', 'motor', 'motor-cable'], ...good)).toEqual([
      'drive bridge',
      'motor winding insulation',
      'motor-cable insulation',
      'protective-conductor insulation',
    ]);
    const more = [...good, motorWindingIs(windings.alike), bend('steady'), isolationIs(isolations.bothGood)];
    expect(excluded(['drive', 'motor', 'motor-cable'], ...more)).toEqual([
      'drive bridge',
      'motor winding winding-motor insulation isolation',
      'motor-cable isolation bend-test insulation',
      'protective-conductor insulation',
    ]);
    expect(excluded([])).toEqual([]);
  });

  it('are motor and cable if it trips without them, every time', () => {
    const came = trips('on-enable');
    const leads = trip('retry-leads-off');
    expect(excluded([], came, leads)).toEqual(['motor retry-leads-off', 'motor-cable retry-leads-off']);
    const both = [came, leads, trip('retry-stripped', { stage: 'at-enable' })];
    expect(excluded([], ...both)).toEqual([
      'motor retry-leads-off retry-stripped',
      'motor-cable retry-leads-off retry-stripped',
    ]);
    expect(excluded([], came, trip('retry-leads-off', { trips: 2 }))).toEqual([]);
    expect(excluded([], came, retry('retry-leads-off', 'no-trip'))).toEqual([]);
  });

  it('are feedback cable and device if it trips without them, every time', () => {
    expect(excluded([], trips('control-off'), trip('retry-feedback-off'))).toEqual([
      'feedback-cable retry-feedback-off',
      'feedback-device retry-feedback-off',
    ]);
    expect(excluded([], trips('control-off'), trip('retry-feedback-off', { trips: 1 }))).toEqual([]);
  });

  it('is a cable that was measured alone, of a trip that needs no motion', () => {
    const alone = isolationIs(isolations.bothGood);
    expect(excluded([], trips('on-enable'), alone)).toEqual(['motor-cable isolation']);
    expect(excluded([], trips('on-acceleration'), alone)).toEqual([]);
    expect(excluded([], trips('on-enable'), seen({ motorCable: 'wet' }), alone)).toEqual([]);
    expect(excluded([], trips('on-enable'), isolationIs(isolations.joinedGoodOnly))).toEqual([]);
  });

  it('is a braking resistor that is good', () => {
    expect(excluded([], brake('20 Ω | 20 Ω | >1M | OL'))).toEqual(['braking-resistor braking']);
    expect(excluded([], brake('20 Ω | 60 Ω | >1M | OL'))).toEqual([]);
  });
});
