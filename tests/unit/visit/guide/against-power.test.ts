import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import {
  againstPower,
  feedbackOutAt,
  hindered,
  isPowerStep,
  leadsOnAt,
  mayEnable,
  motorSideSpeaksAgainst,
  type PowerObjection,
  peCoreOff,
  powerOf,
  powerRefused,
} from '../../../../src/visit/guide/power.ts';
import { stepIds } from '../../../../src/visit/steps/ids.ts';
import type { PowerStepId } from '../../../../src/visit/steps/retry.ts';
import {
  bend,
  brake,
  bridgeIs,
  compared,
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
import { inputIs, inputs } from './support/inputs.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const steps: PowerStepId[] = [
  'retry-feedback-off',
  'retry-device-end',
  'retry-feedback-on',
  'retry-leads-off',
  'retry-stripped',
  'retry-all',
];
/** Nothing in it speaks against any step with power. */
const clean = (when: Symptom = 'on-enable'): Given[] => [
  trips(when),
  seen(),
  bridgeIs(bridges.good),
  windingIs(windings.alike),
  idle(),
  insulationIs(insulations.good),
  mechanics('free'),
];

/** Later answers replace earlier ones, as in a record. */
const against = (history: Given[], step: PowerStepId) => againstPower(visitOf(history), step);
const refusedAt = (history: Given[], objection: PowerObjection) =>
  steps.filter((step) => against(history, step).includes(objection)).map((step) => step.replace('retry-', ''));

const all = ['feedback-off', 'device-end', 'feedback-on', 'leads-off', 'stripped', 'all'];
const but = (...less: string[]) => all.filter((step) => !less.includes(step));

describe('a record with nothing bad', () => {
  it('refuses no step with power', () => {
    for (const step of steps) {
      expect(against(clean(), step)).toEqual([]);
      expect(powerRefused(visitOf(clean()), step)).toBe(false);
    }
  });
});

describe('what speaks against power, and at which steps', () => {
  const rows: [objection: PowerObjection, what: string, history: Given[], at: string[]][] = [
    ['drive-damaged', 'burnt', [seen({ drive: 'burnt' })], all],
    ['drive-damaged', 'wet', [seen({ drive: 'wet' })], all],
    ['bridge-bad', 'a short', [bridgeIs(bridges.shorted)], all],
    ['input-not-sound', 'a short', [inputIs(inputs.shorted)], all],
    ['input-not-sound', 'a fuse that is open', [inputIs(inputs.fuseOnly)], all],
    ['input-not-sound', 'something opened', [trips('on-enable', 'no', { came: 5, of: 5, protection: 'opened' })], all],
    [
      'input-not-sound',
      'something opened, and a precharge out of reach',
      [trips('on-enable', 'no', { came: 5, of: 5, protection: 'opened' }), inputIs(inputs.prechargeInside)],
      all,
    ],
    [
      'input-not-sound',
      'something opened, and a sound input',
      [trips('on-enable', 'no', { came: 5, of: 5, protection: 'opened' }), inputIs(inputs.sound)],
      [],
    ],
    ['not-passed', 'an input left open', [inputIs(inputs.prechargeInside)], ['all']],
    ['trips-without-feedback', 'it trips', [retry('retry-feedback-off', 'trips')], but('feedback-off', 'stripped')],
    ['trips-without-motor', 'it trips', [retry('retry-leads-off', 'trips')], but('leads-off', 'stripped')],
    ['trips-stripped', 'it trips', [retry('retry-stripped', 'trips')], but('stripped')],
    ['trips-without-motor', 'another message', [retry('retry-leads-off', 'other-message')], []],
    ['pe-broken', 'read once', [insulationIs(insulations.peBroken)], all],
    ['pe-broken', 'separately', [isolationIs(isolations.peBroken)], all],
    ['idle-core-low', 'one that touches', [idle('measured', '10 Ω')], all],
    ['braking-bad', 'a resistor off its plate', [brake('20 Ω | 60 Ω | OL | OL')], but('stripped')],
    ['braking-bad', 'its switch low', [brake('20 Ω | 20 Ω | >1M | 5 Ω')], but('stripped')],
    ['feedback-cable-damaged', 'chafed', [seen({ feedbackCable: 'chafed' })], but('feedback-off')],
    ['gone-without-feedback', 'the trip', [retry('retry-feedback-off', 'no-trip')], ['leads-off', 'stripped', 'all']],
    ['motor-side', 'the motor wet', [seen({ motor: 'wet' })], ['feedback-on', 'all']],
    ['motor-side', 'a bad insulation', [insulationIs(insulations.dead)], ['feedback-on', 'all']],
    ['motor-side', 'a bad winding', [windingIs(windings.unlike)], ['feedback-on', 'all']],
    ['motor-side', 'bad at the motor', [motorWindingIs(windings.unlike)], ['feedback-on', 'all']],
    ['motor-side', 'a suspect motor', [isolationIs(isolations.motorSuspect)], ['feedback-on', 'all']],
    ['motor-side', 'a bad cable', [isolationIs(isolations.cableBad)], ['feedback-on', 'all']],
    ['motor-side', 'a core that opens', [bend('opens')], ['feedback-on', 'all']],
    ['motor-side', 'a core that leaks', [bend('leaks')], ['feedback-on', 'all']],
    ['motor-side', 'a cable that stands bending', [bend('steady')], []],
    ['not-passed', 'a stage too close', [bridgeIs(bridges.tooClose)], ['leads-off', 'stripped', 'all']],
    ['not-passed', 'a winding between', [windingIs(windings.between)], ['leads-off', 'stripped', 'all']],
    ['not-passed', 'a warm insulation', [insulationIs(insulations.warm)], ['all']],
    ['not-passed', 'idle cores not measured', [idle('not-done')], ['all']],
    ['change-wrong', 'a change that is wrong', [compared('wrong')], ['all']],
    ['change-wrong', 'a change that was put right', [compared('corrected')], []],
    ['hindered', 'a stiff axis', [mechanics('stiff')], ['all']],
    ['hindered', 'a brake that drags', [mechanics('brake-drags')], ['all']],
    ['hindered', 'an axis that is held', [mechanics('held')], []],
  ];
  it.each(rows)('%s, %s', (objection, _, history, at) => {
    expect(refusedAt([...clean(), ...history], objection)).toEqual(at);
  });

  it('a stripped drive whose control is off has no feedback and is not enabled', () => {
    const history = [...clean('control-off'), seen({ feedbackCable: 'chafed' }), bridgeIs(bridges.tooClose)];
    expect(against(history, 'retry-stripped')).toEqual([]);
    expect(against([...history, retry('retry-feedback-off', 'no-trip')], 'retry-stripped')).toEqual([]);
  });

  it('a trial of the axis needs no reading that was never taken, but its idle cores', () => {
    const [symptom, looked] = clean();
    if (symptom === undefined || looked === undefined) throw new Error('no record');
    expect(against([symptom, looked, idle()], 'retry-all')).toEqual([]);
    expect(against([symptom, looked], 'retry-all')).toEqual(['not-passed']);
    expect(against([symptom, looked], 'retry-leads-off')).toEqual(['not-passed']);
  });
});

describe('the side of the motor', () => {
  it('is bad by any reading or sight of it', () => {
    expect(motorSideSpeaksAgainst(visitOf(clean()))).toBe(false);
    expect(motorSideSpeaksAgainst(visitOf([...clean(), isolationIs(isolations.bothGood)]))).toBe(false);
    expect(motorSideSpeaksAgainst(visitOf([...clean(), isolationIs(isolations.motorBad)]))).toBe(true);
    expect(motorSideSpeaksAgainst(visitOf([...clean(), seen({ motorCable: 'chafed' })]))).toBe(true);
  });
});

describe('an enable without the motor', () => {
  it('needs output stage and winding', () => {
    expect(mayEnable(visitOf(clean()))).toBe(true);
    expect(mayEnable(visitOf([bridgeIs(bridges.good)]))).toBe(false);
    expect(mayEnable(visitOf([windingIs(windings.alike)]))).toBe(false);
    expect(mayEnable(visitOf([...clean(), windingIs(windings.incomplete)]))).toBe(false);
  });
});

describe('the steps with power', () => {
  it('are the six tries, and no other', () => {
    expect(stepIds.filter(isPowerStep).sort()).toEqual([...steps].sort());
  });

  it('have steps that only prepare them', () => {
    const prepared = stepIds.filter((id) => powerOf(id) !== undefined && !isPowerStep(id));
    expect(Object.fromEntries(prepared.map((id) => [id, powerOf(id)]))).toEqual({
      'unplug-feedback': 'retry-feedback-off',
      'unplug-device-end': 'retry-device-end',
      'plug-feedback': 'retry-feedback-on',
      'strip-drive': 'retry-stripped',
      reconnect: 'retry-all',
    });
    for (const step of steps) expect(powerOf(step)).toBe(step);
    expect(powerOf('bridge')).toBeUndefined();
  });
});

describe('what is off the drive', () => {
  it('are the leads after they were taken off, until they are on again', () => {
    const record = visitOf([trips('on-enable'), done('disconnect-leads'), seen(), done('reconnect')]);
    expect([1, 2, 3, 4, 5].map((seq) => leadsOnAt(record, seq))).toEqual([true, false, false, true, true]);
    expect(leadsOnAt(visitOf([]), 1)).toBe(true);
  });

  it('is the PE core after a test of the insulation, until it is connected', () => {
    expect(peCoreOff(visitOf([]))).toBe(false);
    const tested = insulationIs(insulations.good);
    expect(peCoreOff(visitOf([tested]))).toBe(true);
    expect(peCoreOff(visitOf([isolationIs(isolations.bothGood)]))).toBe(true);
    expect(peCoreOff(visitOf([tested, done('reconnect')]))).toBe(false);
    expect(peCoreOff(visitOf([tested, done('connect-pe')]))).toBe(false);
    expect(peCoreOff(visitOf([done('connect-pe'), tested]))).toBe(true);
    expect(peCoreOff(visitOf([tested, done('connect-pe'), isolationIs(isolations.bothGood)]))).toBe(true);
  });

  it('is the feedback after the last step that unplugged it', () => {
    expect(feedbackOutAt(visitOf([]))).toBe(0);
    expect(feedbackOutAt(visitOf([seen(), done('unplug-feedback')]))).toBe(2);
    expect(feedbackOutAt(visitOf([done('unplug-feedback'), seen(), done('unplug-device-end')]))).toBe(3);
    expect(feedbackOutAt(visitOf([done('unplug-feedback'), strip()]))).toBe(2);
    expect(feedbackOutAt(visitOf([done('unplug-feedback'), strip('not-allowed')]))).toBe(1);
  });
});

it('an axis is hindered by what is stiff or drags', () => {
  const found = (['free', 'stiff', 'brake-drags', 'held', 'not-checked'] as const).filter((state) =>
    hindered(visitOf([mechanics(state)])),
  );
  expect(found).toEqual(['stiff', 'brake-drags']);
});
