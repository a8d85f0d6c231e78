import { describe, expect, it } from 'vitest';
import { measureAfter } from '../../../../src/visit/guide/routes.ts';
import {
  bend,
  brake,
  bridgeIs,
  done,
  idle,
  insulationIs,
  isolationIs,
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

const off = (result: 'trips' | 'no-trip') => retry('retry-feedback-off', result);
const good: Given[] = [
  ...[trips('on-enable'), seen(), bridgeIs(bridges.good), windingIs(windings.alike)],
  ...[idle(), insulationIs(insulations.good)],
];
describe('the order of the measurements', () => {
  type Step = Parameters<typeof measureAfter>[0];
  const after = (id: Step, way: Given[], record = way) => measureAfter(id, visitOf(way), visitOf(record));
  const enable = [trips('on-enable'), bridgeIs(bridges.good), windingIs(windings.alike)];

  it.each<[id: Step, what: string, way: Given[], then: string]>([
    [undefined, 'at first', [trips('on-enable')], 'bridge'],
    ['bridge', 'on enable', [trips('on-enable')], 'winding'],
    ['bridge', 'fuses or breaker opened', [trips('on-enable', 'no', { protection: 'opened' })], 'input-circuit'],
    ['bridge', 'they held', [trips('on-enable', 'no', { protection: 'held' })], 'winding'],
    ['bridge', 'nobody knows', [trips('on-enable', 'no', { protection: 'unknown' })], 'winding'],
    ['bridge', 'an input that failed on another way', [trips('on-enable'), inputIs(inputs.shorted)], 'input-circuit'],
    ['bridge', 'an open one', [trips('on-enable'), inputIs(inputs.prechargeInside)], 'input-circuit'],
    ['bridge', 'a sound one', [trips('on-enable'), inputIs(inputs.sound)], 'winding'],
    ['input-circuit', 'on braking', [trips('on-braking', 'no', { protection: 'opened' })], 'braking'],
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

it('a drive that was stripped is measured on', () => {
  expect(measureAfter('strip-drive', visitOf([trips('on-enable'), strip()]), visitOf([]))).toBe('idle-cores');
});
