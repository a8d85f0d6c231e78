import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import {
  afterHandTest,
  afterMeasuring,
  conclude,
  feedbackFirst,
  leadsOffThen,
  measureAfter,
  wantsHandTest,
  withoutPower,
} from '../../../../src/visit/guide/routes.ts';
import type { PowerStepId } from '../../../../src/visit/steps/retry.ts';
import {
  bend,
  brake,
  bridgeIs,
  done,
  idle,
  insulationIs,
  isolationIs,
  mechanics,
  motorWindingIs,
  retry,
  seen,
  strip,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const moments: Symptom[] = [
  ...(['control-off', 'on-enable', 'on-acceleration', 'on-braking'] as const),
  ...(['position-or-cable', 'when-hot', 'now-and-then'] as const),
];
const off = (result: 'trips' | 'no-trip') => retry('retry-feedback-off', result);
const gone: Given[] = [off('no-trip'), retry('retry-device-end', 'no-trip')];
const leadsOff = done('disconnect-leads');
const good: Given[] = [
  ...[trips('on-enable'), seen(), bridgeIs(bridges.good), windingIs(windings.alike)],
  ...[idle(), insulationIs(insulations.good)],
];
/** Both on the way and in the record, unless the record is given. */
type Route = (visit: ReturnType<typeof visitOf>, record: ReturnType<typeof visitOf>) => unknown;
const by = (route: Route, way: Given[], record = way) => route(visitOf(way), visitOf(record));

describe('if power is refused', () => {
  it.each<[step: PowerStepId, way: Given[], then: string]>([
    ['retry-feedback-off', [], 'disconnect-leads'],
    ['retry-feedback-off', [leadsOff], 'bridge'],
    ['retry-device-end', [seen(), leadsOff], 'decide'],
    ['retry-device-end', [seen({ motor: 'wet' }), leadsOff], 'bridge'],
    ['retry-device-end', [seen({ drive: 'wet' })], 'disconnect-leads'],
    ['retry-device-end', [seen(), leadsOff, bridgeIs(bridges.shorted)], 'bridge'],
    ['retry-feedback-on', [seen(), leadsOff], 'decide'],
    ['retry-leads-off', [trips('on-enable'), leadsOff], 'idle-cores'],
    ['retry-stripped', [trips('on-enable'), leadsOff], 'idle-cores'],
    ['retry-stripped', [trips('position-or-cable'), leadsOff], 'bend-test'],
    ['retry-all', [seen(), leadsOff], 'decide'],
    ['retry-all', [seen(), ...gone], 'plug-feedback'],
  ])('at %s, %j: %s', (step, way, then) => {
    expect(by(withoutPower[step], way)).toBe(then);
  });

  it('an isolation that was measured on another way and did not pass is asked for', () => {
    expect(by(withoutPower['retry-all'], good, [...good, isolationIs(isolations.motorBad)])).toBe('isolation');
    expect(by(withoutPower['retry-all'], good, [...good, isolationIs(isolations.bothGood)])).toBe('decide');
    const onWay = [...good, isolationIs(isolations.motorBad)];
    expect(by(withoutPower['retry-all'], onWay)).toBe('decide');
  });
});

describe('the first step after the inspection', () => {
  it('is the feedback, unless drive, motor or cable speak against power', () => {
    expect(by(feedbackFirst, [seen()])).toBe('unplug-feedback');
    expect(by(feedbackFirst, [seen({ drive: 'wet' })])).toBe('disconnect-leads');
    expect(by(feedbackFirst, [seen({ motor: 'wet' })])).toBe('disconnect-leads');
    expect(by(feedbackFirst, [seen()], [seen(), insulationIs(insulations.dead)])).toBe('disconnect-leads');
  });

  it('takes the leads off once', () => {
    expect(leadsOffThen('bridge', visitOf([]))).toBe('disconnect-leads');
    expect(leadsOffThen('bridge', visitOf([leadsOff]))).toBe('bridge');
    expect(leadsOffThen('mechanics', visitOf([leadsOff]))).toBe('mechanics');
  });
});

describe('moving the axis by hand', () => {
  it('is wanted of a trip that needs motion', () => {
    const wants = moments.filter((when) => by(wantsHandTest, [trips(when)]));
    expect(wants).toEqual(moments.slice(2));
  });

  it('stays on the way if the record has bad mechanics', () => {
    for (const found of ['stiff', 'brake-drags'] as const)
      expect(by(wantsHandTest, [trips('on-enable')], [mechanics(found)])).toBe(true);
    for (const found of ['free', 'held', 'not-checked'] as const)
      expect(by(wantsHandTest, [trips('on-enable')], [mechanics(found)])).toBe(false);
  });

  it('is followed by the feedback of a trip with the control off, if that was not tried', () => {
    const after = (...way: Given[]) => by(afterHandTest, way);
    expect(after(trips('control-off'), seen())).toBe('unplug-feedback');
    expect(after(trips('control-off'), seen(), off('trips'))).toBe('bridge');
    expect(after(trips('control-off'), seen({ drive: 'wet' }))).toBe('bridge');
    expect(after(trips('on-enable'), seen())).toBe('bridge');
  });
});

describe('the order of the measurements', () => {
  type Step = Parameters<typeof measureAfter>[0];
  const after = (id: Step, way: Given[], record = way) => measureAfter(id, visitOf(way), visitOf(record));
  const enable = [trips('on-enable'), bridgeIs(bridges.good), windingIs(windings.alike)];

  it.each<[id: Step, what: string, way: Given[], then: string]>([
    [undefined, 'at first', [trips('on-enable')], 'bridge'],
    ['bridge', 'on enable', [trips('on-enable')], 'winding'],
    ['bridge', 'on braking', [trips('on-braking')], 'braking'],
    ['bridge', 'a moment that nobody saw', [['symptom', { when: 'unknown', gravityLoaded: 'no' }]], 'braking'],
    ['bridge', 'a bad braking circuit', [trips('on-enable'), brake('20 Ω | 60 Ω | >1M | OL')], 'braking'],
    ['bridge', 'a good braking circuit', [trips('on-enable'), brake('20 Ω | 20 Ω | >1M | OL')], 'winding'],
    ['braking', 'on braking', [trips('on-braking')], 'winding'],
    [
      'braking',
      'an older record with a bad motor',
      [trips('on-braking'), isolationIs(isolations.motorBad)],
      'idle-cores',
    ],
    ['braking', 'with a suspect one', [trips('on-braking'), isolationIs(isolations.motorSuspect)], 'idle-cores'],
    ['braking', 'with a bad cable', [trips('on-braking'), isolationIs(isolations.cableBad)], 'winding'],
    ['winding', 'on enable, both good', enable, 'retry-leads-off'],
    ['winding', 'on enable, a bad stage', [...enable, bridgeIs(bridges.shorted)], 'idle-cores'],
    ['winding', 'on enable, a bad winding', [...enable, windingIs(windings.unlike)], 'winding-motor'],
    ['winding', 'between the limits', [...enable, windingIs(windings.between)], 'idle-cores'],
    ['winding', 'bad at the motor before', [...enable, motorWindingIs(windings.unlike)], 'winding-motor'],
    ['winding', 'good at the motor before', [...enable, motorWindingIs(windings.alike)], 'retry-leads-off'],
    ['winding', 'moving', [trips('on-acceleration'), bridgeIs(bridges.good), windingIs(windings.alike)], 'idle-cores'],
    [
      'winding',
      'tried before, the stage bad since',
      [...enable, bridgeIs(bridges.shorted), retry('retry-leads-off', 'no-trip')],
      'retry-leads-off',
    ],
    ['winding-motor', 'on enable', [...enable, windingIs(windings.unlike)], 'idle-cores'],
    ['retry-leads-off', 'it trips', [...enable, retry('retry-leads-off', 'trips')], 'strip-drive'],
    ['retry-leads-off', 'it does not', [...enable, retry('retry-leads-off', 'no-trip')], 'idle-cores'],
    ['winding', 'it trips without feedback', [trips('control-off'), off('trips')], 'strip-drive'],
    ['winding', 'it is gone without feedback', [trips('control-off'), off('no-trip')], 'idle-cores'],
    [
      'winding',
      'control off, and it trips without motor',
      [trips('control-off'), retry('retry-leads-off', 'trips')],
      'idle-cores',
    ],
    ['winding', 'moving, and it trips without feedback', [trips('now-and-then'), off('trips')], 'idle-cores'],
    ['strip-drive', 'at a position', [trips('position-or-cable')], 'bend-test'],
    ['strip-drive', 'a core that opened', [trips('on-enable'), bend('opens')], 'bend-test'],
    ['strip-drive', 'a cable that was steady', [trips('on-enable'), bend('steady')], 'idle-cores'],
    ['bend-test', 'at a position', [trips('position-or-cable')], 'idle-cores'],
    ['idle-cores', 'always', [trips('on-enable')], 'insulation'],
  ])('after %s, %s: %s', (id, _, way, then) => {
    expect(after(id, way)).toBe(then);
  });

  it('a record of the older order has its idle cores read before anything is connected', () => {
    const older = [...enable, insulationIs(insulations.good)];
    expect(after('bend-test', enable, older)).toBe('insulation');
    expect(after('bend-test', enable, [...older, idle()])).toBe('idle-cores');
  });

  it('a record of the older order has its enable without motor first', () => {
    const [symptom] = enable as [Given, ...Given[]];
    const older = [symptom, retry('retry-leads-off', 'trips')];
    expect(after(undefined, older)).toBe('retry-leads-off');
    expect(after('retry-leads-off', older)).toBe('bridge');
    expect(after('bridge', older)).toBe('winding');
    expect(after(undefined, [...older, windingIs(windings.alike)])).toBe('bridge');
    expect(after(undefined, [trips('now-and-then'), retry('retry-leads-off', 'trips')])).toBe('bridge');
  });

  it.each<[what: string, way: Given[], then: string]>([
    ['a good insulation is enough', [], 'reconnect'],
    ['not of a cable that moves', [trips('position-or-cable'), bend('steady')], 'isolation'],
    ['not if it does not pass', [insulationIs(insulations.dead)], 'isolation'],
    ['not if an isolation has failed', [isolationIs(isolations.motorBad)], 'isolation'],
    ['one that passed is not asked for again', [isolationIs(isolations.bothGood)], 'reconnect'],
    [
      'one after a trip of the whole axis is asked for after that trip',
      [retry('retry-all', 'trips'), isolationIs(isolations.motorBad)],
      'isolation',
    ],
  ])('after the insulation: %s', (_, more, then) => {
    expect(after('insulation', [...good, ...more])).toBe(then);
  });

  it('an isolation that failed after a trip of the whole axis stays after that trip', () => {
    const way = [...good, done('reconnect')];
    const tried = [...way, retry('retry-all', 'trips'), isolationIs(isolations.motorBad)];
    expect(after('insulation', good, tried)).not.toBe('isolation');
    const before = [...good, isolationIs(isolations.motorBad), retry('retry-all', 'trips')];
    expect(after('insulation', good, before)).toBe('isolation');
  });
});

describe('after the last measurement', () => {
  const after = (way: Given[], record = way) => afterMeasuring(visitOf(way), visitOf(record));
  const withoutIdle = good.filter(([id]) => id !== 'idle-cores');
  const without = (gone: string) => good.filter(([id]) => id !== gone);

  it.each<[what: string, more: Given[], then: string]>([
    ['everything passed', [], 'reconnect'],
    ['separated, both good', [isolationIs(isolations.bothGood)], 'reconnect'],
    ['separated, a contradiction', [isolationIs(isolations.contradiction)], 'decide'],
    ['separated, one not known', [isolationIs(isolations.cableBadMotorOpen)], 'decide'],
    [
      'joined only, of a cable that moves',
      [trips('position-or-cable'), isolationIs(isolations.joinedGoodOnly)],
      'decide',
    ],
    ['a stage that is too close', [bridgeIs(bridges.tooClose)], 'decide'],
    ['a bad insulation', [insulationIs(insulations.dead)], 'decide'],
    ['a winding between the limits', [windingIs(windings.between)], 'decide'],
    ['a part proven bad', [bend('opens')], 'decide'],
    ['a part suspect', [bend('opens', false)], 'decide'],
    ['the trip is gone without feedback', [off('no-trip')], 'decide'],
    ['the trip is gone without the device, PE off', gone, 'decide'],
    ['a wet drive', [seen({ drive: 'wet' })], 'decide'],
    ['a stiff axis', [mechanics('stiff')], 'decide'],
    ['idle cores not done', [idle('not-done')], 'decide'],
  ])('%s: %s', (_, more, then) => {
    expect(after([...good, ...more])).toBe(then);
  });

  it.each(['bridge', 'insulation', 'winding'])('%s that was not taken: the decision', (id) => {
    expect(after(without(id))).toBe('decide');
  });

  it('idle cores that nobody was asked for are read, unless the axis was tried since', () => {
    expect(after(withoutIdle)).toBe('idle-cores');
    expect(after(withoutIdle, [...withoutIdle, retry('retry-all', 'no-trip')])).toBe('reconnect');
  });
});

describe('the last question', () => {
  it('is whether the trip comes back with the device, before the insulation takes PE off', () => {
    const last = (way: Given[], record = way) => conclude(visitOf(way), visitOf(record));
    expect(last(gone)).toBe('plug-feedback');
    expect(last([off('no-trip')])).toBe('decide');
    expect(last(gone, [...gone, insulationIs(insulations.good)])).toBe('decide');
    expect(last([])).toBe('decide');
  });
});

it('a drive that was stripped is measured on', () => {
  expect(measureAfter('strip-drive', visitOf([trips('on-enable'), strip()]), visitOf([]))).toBe('idle-cores');
});
