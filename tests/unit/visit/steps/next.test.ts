import { describe, expect, it } from 'vitest';
import type { VisitAnswers } from '../../../../src/visit/steps/questions.ts';
import type { PlainRule, PlainStepId } from '../../../../src/visit/steps/rule.ts';
import { rules } from '../../../../src/visit/steps/rules.ts';
import {
  bend,
  bridgeIs,
  done,
  idle,
  insulationIs,
  isolationIs,
  mechanics,
  retry,
  seen,
  strip,
  trips,
  windingIs,
} from '../guide/support/answers.ts';
import { bridges, insulations, isolations, windings } from '../guide/support/readings.ts';
import { type Given, visitOf } from '../guide/support/visit.ts';

const after = (id: PlainStepId, way: Given[], record = way): string => {
  const rule = rules[id] as PlainRule<PlainStepId>;
  return rule.next(visitOf(way), visitOf(record));
};
const off = done('disconnect-leads');
const gone = retry('retry-feedback-off', 'no-trip');
const good: Given[] = [
  ...[trips('on-acceleration'), seen(), off, bridgeIs(bridges.good), windingIs(windings.alike)],
  ...[idle(), insulationIs(insulations.good)],
];

describe('what follows a step', () => {
  it.each<[id: PlainStepId, way: Given[], then: string]>([
    ['find-drive', [], 'symptom'],
    ['symptom', [trips('on-enable')], 'inspect'],
    ['inspect', [trips('control-off'), seen()], 'unplug-feedback'],
    ['inspect', [trips('control-off'), seen(), mechanics('stiff')], 'disconnect-leads'],
    ['inspect', [trips('control-off'), seen({ drive: 'burnt' })], 'disconnect-leads'],
    ['inspect', [trips('on-enable'), seen()], 'disconnect-leads'],
    ['inspect', [], 'disconnect-leads'],
    ['unplug-feedback', [], 'retry-feedback-off'],
    ['retry-feedback-off', [gone], 'unplug-device-end'],
    ['retry-feedback-off', [retry('retry-feedback-off', 'trips')], 'disconnect-leads'],
    ['retry-feedback-off', [off, retry('retry-feedback-off', 'trips')], 'bridge'],
    ['unplug-device-end', [], 'retry-device-end'],
    ['retry-device-end', [gone, retry('retry-device-end', 'no-trip')], 'plug-feedback'],
    ['retry-device-end', [gone, retry('retry-device-end', 'trips')], 'decide'],
    ['retry-device-end', [seen({ motor: 'wet' }), gone, retry('retry-device-end', 'no-trip')], 'disconnect-leads'],
    ['retry-device-end', [seen({ motor: 'wet' }), off, gone, retry('retry-device-end', 'no-trip')], 'bridge'],
    ['plug-feedback', [], 'retry-feedback-on'],
    ['retry-feedback-on', [], 'decide'],
    ['disconnect-leads', [trips('on-acceleration')], 'mechanics'],
    ['disconnect-leads', [trips('on-enable')], 'bridge'],
    ['disconnect-leads', [trips('control-off'), seen()], 'unplug-feedback'],
    ['mechanics', [trips('on-acceleration')], 'bridge'],
    ['mechanics', [trips('control-off'), seen()], 'unplug-feedback'],
    ['bridge', [trips('on-braking')], 'braking'],
    ['braking', [trips('on-braking')], 'winding'],
    ['winding', [trips('on-enable'), bridgeIs(bridges.good), windingIs(windings.alike)], 'retry-leads-off'],
    ['winding-motor', [trips('on-acceleration')], 'idle-cores'],
    [
      'retry-leads-off',
      [trips('on-enable'), windingIs(windings.alike), retry('retry-leads-off', 'trips')],
      'strip-drive',
    ],
    ['strip-drive', [trips('on-enable'), strip()], 'retry-stripped'],
    ['strip-drive', [trips('on-enable'), strip('some-left')], 'retry-stripped'],
    ['strip-drive', [trips('on-enable'), strip('not-allowed')], 'idle-cores'],
    ['strip-drive', [trips('on-enable')], 'retry-stripped'],
    ['retry-stripped', [trips('position-or-cable')], 'bend-test'],
    ['bend-test', [trips('position-or-cable'), bend('steady')], 'idle-cores'],
    ['idle-cores', [trips('on-enable')], 'insulation'],
    ['insulation', good, 'reconnect'],
    ['insulation', [...good, insulationIs(insulations.dead)], 'isolation'],
    ['isolation', [...good, isolationIs(isolations.bothGood)], 'reconnect'],
    ['isolation', [...good, isolationIs(isolations.motorBad)], 'decide'],
    ['isolation', [...good, retry('retry-all', 'trips'), isolationIs(isolations.bothGood)], 'decide'],
    ['reconnect', good, 'retry-all'],
    ['retry-all', [...good, retry('retry-all', 'no-trip')], 'decide'],
    ['retry-all', [...good, retry('retry-all', 'trips')], 'isolation'],
    ['retry-all', [...good, isolationIs(isolations.bothGood), retry('retry-all', 'trips')], 'decide'],
  ])('%s, %j: %s', (id, way, then) => {
    expect(after(id, way)).toBe(then);
  });

  it('keeps to what the record has against it', () => {
    const way: Given[] = [trips('control-off'), seen()];
    expect(after('inspect', way, [...way, insulationIs(insulations.dead)])).toBe('disconnect-leads');
    const tried: Given[] = [gone, retry('retry-device-end', 'no-trip')];
    expect(after('retry-device-end', tried, [...tried, windingIs(windings.unlike)])).toBe('disconnect-leads');
  });
});

describe('what a later answer undoes', () => {
  const undone = (id: PlainStepId | 'connect-pe', ...record: Given[]) => {
    const { undone: is } = rules[id] as { undone?: (record: VisitAnswers) => boolean };
    return is?.(visitOf(record));
  };

  it('are leads that were put on again', () => {
    expect(undone('disconnect-leads', off)).toBe(false);
    expect(undone('disconnect-leads', off, done('reconnect'))).toBe(true);
    expect(undone('disconnect-leads', done('reconnect'), off)).toBe(false);
  });

  it('is feedback that was unplugged again', () => {
    const [plug, unplug] = [done('plug-feedback'), done('unplug-feedback')];
    expect(undone('plug-feedback', unplug, plug)).toBe(false);
    expect(undone('plug-feedback', plug, unplug)).toBe(true);
    expect(undone('plug-feedback', unplug)).toBe(true);
    expect(undone('plug-feedback', plug)).toBe(false);
    expect(undone('plug-feedback')).toBe(false);
  });

  it('is PE that comes off for a test of the insulation', () => {
    const tested = insulationIs(insulations.good);
    for (const id of ['connect-pe', 'reconnect'] as const) {
      expect(undone(id, tested, done(id))).toBe(false);
      expect(undone(id, done(id), tested)).toBe(true);
    }
  });

  it('is nothing else', () => {
    const can = Object.entries(rules).filter(([, rule]) => 'undone' in rule && rule.undone !== undefined);
    expect(can.map(([id]) => id).sort()).toEqual(['connect-pe', 'disconnect-leads', 'plug-feedback', 'reconnect']);
  });
});
