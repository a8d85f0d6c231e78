import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import { type OpenItem, openItems } from '../../../../src/visit/guide/open-items.ts';
import type { PowerStepId, RetryAnswer } from '../../../../src/visit/steps/retry.ts';
import {
  bend,
  brake,
  bridgeIs,
  compared,
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

const open = (...given: Given[]) => openItems(visitOf(given));
const measured: Given[] = [
  ...[trips('on-enable'), seen(), bridgeIs(bridges.good), windingIs(windings.alike)],
  ...[idle(), insulationIs(insulations.good)],
];
const off = (result: RetryAnswer['result']) => retry('retry-feedback-off', result);
const device = (result: RetryAnswer['result']) => retry('retry-device-end', result);
const back = (result: RetryAnswer['result']) => retry('retry-feedback-on', result);
const chafed = seen({ feedbackCable: 'chafed' });
const at = (when: Symptom | 'unknown'): Given => ['symptom', { when, gravityLoaded: 'no' }];

describe('what is open', () => {
  const rows: [what: string, given: Given[], open: OpenItem[]][] = [
    ['nothing', [], []],
    ['a wet drive', [seen({ drive: 'wet' })], ['damage-open']],
    ['a motor that is burnt', [seen({ motor: 'burnt' })], ['motor-damaged']],
    ['a motor that nobody saw', [seen({ motor: 'unseen' })], ['not-looked-at']],
    ['a cable that is chafed', [seen({ motorCable: 'chafed' })], ['cable-damaged']],
    ['another message', [retry('retry-leads-off', 'other-message')], ['another-message']],
    ['a stage that is too close', [bridgeIs(bridges.tooClose)], ['bridge-open']],
    ['a stage that is shorted', [bridgeIs(bridges.shorted)], []],
    ['idle cores that were not measured', [idle('not-done')], ['idle-cores-open']],
    ['an idle core that touches is known', [idle('measured', '10 Ω')], []],
    ['a bad insulation', [insulationIs(insulations.dead)], ['insulation-open']],
    ['an insulation that is warm', [insulationIs(insulations.warm)], ['insulation-open']],
    ['a cable that is not known', [isolationIs(isolations.motorBadCableOpen)], ['cable-open']],
    ['a motor that is not known', [isolationIs(isolations.cableBadMotorOpen)], ['motor-open']],
    ['an isolation that is undecided', [isolationIs(isolations.joinedUnclear)], ['insulation-open']],
    ['a winding between the limits', [windingIs(windings.between)], ['winding-open']],
    ['the same at the motor', [motorWindingIs(windings.between)], ['winding-open']],
    ['a winding that is bad', [windingIs(windings.unlike)], []],
    ['a change that nobody compared', [compared('not-compared')], ['change-open']],
    ['a change that is wrong', [compared('wrong')], ['change-wrong']],
    ['a change that was put right', [compared('corrected')], []],
    ['a stiff axis', [mechanics('stiff')], ['mechanics']],
    ['a brake that drags', [mechanics('brake-drags')], ['mechanics']],
    ['an axis that is held', [mechanics('held')], ['axis-held']],
    ['mechanics that nobody checked', [mechanics('not-checked')], ['mechanics-not-checked']],
    ['a free axis', [mechanics('free')], []],
  ];
  it.each(rows)('%s', (_, more, items) => {
    expect(open(...measured, ...more)).toEqual(items);
  });

  it.each<PowerStepId>([
    ...(['retry-feedback-off', 'retry-device-end', 'retry-feedback-on'] as const),
    ...(['retry-leads-off', 'retry-stripped', 'retry-all'] as const),
  ])('%s that was not done, or ended with another message', (id) => {
    expect(open(retry(id, 'not-done'))).toEqual(['retry-not-done']);
    expect(open(retry(id, 'other-message'))).toEqual(['another-message']);
  });

  it('is nothing of what was never begun', () => {
    expect(open()).toEqual([]);
    expect(open(at('unknown'))).toEqual([]);
  });
});

describe('what the moment wants measured, once the measurements have begun', () => {
  const hot = (celsius: number) => insulationIs(insulations.good, undefined, celsius);
  const steady = 'bend-test-open';

  it.each<[when: Symptom | 'unknown', more: Given[], open: OpenItem[]]>([
    ['on-braking', [], ['braking-open']],
    ['on-braking', [brake('20 Ω | 20 Ω | >1M | OL')], []],
    ['on-braking', [brake('20 Ω | 60 Ω | >1M | OL')], []],
    ['on-braking', [brake('20 Ω | 60 Ω | >1M | <5k')], []],
    ['on-braking', [brake('20 Ω | 20 Ω | >1M | <5k')], ['braking-open']],
    ['on-braking', [brake('20 Ω | OL | >1M | OL')], ['braking-open']],
    ['position-or-cable', [], [steady]],
    ['position-or-cable', [bend('steady')], []],
    ['position-or-cable', [bend('steady', false)], [steady]],
    ['position-or-cable', [bend('opens', false, 'power')], []],
    ['position-or-cable', [bend('opens', true, 'feedback')], [steady]],
    ['when-hot', [], ['measure-hot']],
    ['when-hot', [hot(39.9)], ['measure-hot']],
    ['when-hot', [hot(40)], []],
    ['unknown', [], ['braking-open', steady, 'measure-hot']],
    ['on-enable', [], []],
    ['now-and-then', [], []],
  ])('%s, %j: %j', (when, more, items) => {
    expect(open(...measured, at(when), ...more)).toEqual(items);
  });

  it('is nothing before that', () => {
    for (const when of ['on-braking', 'position-or-cable', 'when-hot'] as const)
      expect(open(at(when), seen())).toEqual([]);
  });
});

describe('the feedback', () => {
  const rows: [what: string, given: Given[], open: OpenItem[]][] = [
    ['it trips without it', [off('trips'), strip(), retry('retry-stripped', 'trips')], []],
    ['it is gone without it', [off('no-trip')], ['feedback-cable-or-device']],
    [
      'and the device was not tried',
      [off('no-trip'), device('not-done')],
      ['feedback-cable-or-device', 'retry-not-done'],
    ],
    [
      'another message without the device',
      [off('no-trip'), device('other-message')],
      ['feedback-cable-or-device', 'another-message'],
    ],
    ['gone, and the cable is chafed', [chafed, off('no-trip')], ['feedback-device-untested']],
    ['it trips with the cable alone', [off('no-trip'), device('trips')], []],
    ['gone without the device, and not tried with it', [off('no-trip'), device('no-trip')], ['feedback-device-open']],
    [
      'gone without the device, not done with it',
      [off('no-trip'), device('no-trip'), back('not-done')],
      ['feedback-device-open', 'retry-not-done'],
    ],
    [
      'another message with it',
      [off('no-trip'), device('no-trip'), back('other-message')],
      ['feedback-device-open', 'another-message'],
    ],
    ['gone with it too', [off('no-trip'), device('no-trip'), back('no-trip')], ['feedback-contact']],
    ['back with it', [off('no-trip'), device('no-trip'), back('trips')], []],
  ];
  it.each(rows)('%s', (_, given, items) => {
    expect(open(...given)).toEqual(items);
  });
});

describe('a trip without motor or feedback', () => {
  const stripped = (result: RetryAnswer['result']) => retry('retry-stripped', result);
  const leads = retry('retry-leads-off', 'trips');
  const rows: [what: string, given: Given[], open: OpenItem[]][] = [
    ['and nothing more taken off', [leads], ['not-all-taken-off']],
    ['and all off, not tried', [leads, strip()], ['not-all-taken-off']],
    ['and all off, not done', [leads, strip(), stripped('not-done')], ['retry-not-done', 'not-all-taken-off']],
    [
      'and all off, another message',
      [leads, strip(), stripped('other-message')],
      ['another-message', 'not-all-taken-off'],
    ],
    ['and all off, it trips', [leads, strip(), stripped('trips')], []],
    ['and some left, it trips', [leads, strip('some-left'), stripped('trips')], ['not-all-taken-off']],
    ['and all off, no trip', [leads, strip(), stripped('no-trip')], ['something-taken-off']],
    [
      'and some left, no trip',
      [leads, strip('some-left'), stripped('no-trip')],
      ['not-all-taken-off', 'something-taken-off'],
    ],
    ['without feedback, nothing taken off', [off('trips')], ['not-all-taken-off']],
    ['no trip without motor', [retry('retry-leads-off', 'no-trip'), strip(), stripped('no-trip')], []],
  ];
  it.each(rows)('%s', (_, given, items) => {
    expect(open(...given)).toEqual(items);
  });
});

describe('a trip that did not come back', () => {
  const all = (other: Partial<RetryAnswer> = {}) => retry('retry-all', 'no-trip', other);

  it.each<[what: string, given: Given[], open: OpenItem[]]>([
    ['in enough tries', [trips('on-acceleration'), all()], []],
    ['in too few', [trips('on-acceleration'), all({ tries: 2 })], ['watch']],
    ['not tried as it trips', [trips('on-acceleration'), all({ asItTrips: false })], ['watch']],
    ['a moment at rest needs no more', [trips('on-enable'), all({ asItTrips: false })], []],
    ['of which nobody knows how often it came', [trips('on-enable', 'no', {}), all()], ['watch']],
    ['that comes now and then', [trips('now-and-then'), all({ tries: 100 })], ['watch']],
    ['that came back', [trips('now-and-then'), retry('retry-all', 'trips')], []],
    ['without a moment', [at('unknown'), all()], ['watch']],
  ])('%s', (_, given, items) => {
    expect(open(...given)).toEqual(items);
  });
});
