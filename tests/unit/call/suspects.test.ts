import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { callSheet } from '../../../src/call/rule/call-sheet.ts';
import type { CallFacts } from '../../../src/call/rule/facts.ts';
import { everyCause, likelyAt } from '../../../src/visit/guide/causes.ts';
import { anyCall } from './any-call.ts';
import { nothingSaid, sheetOf } from './call.ts';

const first = (said: Partial<CallFacts>) => sheetOf(said).suspects[0]?.cause;

describe('what a call points at (common practice, no source)', () => {
  test.each<[string, Partial<CallFacts>, string]>([
    ['on enable', { moment: 'on-enable' }, 'output-stage'],
    ['control off', { moment: 'control-off' }, 'feedback-supply'],
    ['on braking', { moment: 'on-braking' }, 'braking-circuit'],
    ['on enable, cable chafed', { moment: 'on-enable', seen: ['cable-damaged'] }, 'cable-insulation'],
    ['on enable, motor exchanged', { moment: 'on-enable', before: ['motor-changed'] }, 'commutation'],
    ['in motion, washed down', { moment: 'on-acceleration', before: ['water'] }, 'winding-insulation'],
    ['on enable, runs without the motor', { moment: 'on-enable', tried: { 'leads-off': 'runs' } }, 'cable-insulation'],
    [
      'in motion, trips without the motor',
      { moment: 'on-acceleration', tried: { 'leads-off': 'trips' } },
      'drive-control',
    ],
    ['another drive trips too', { moment: 'on-enable', tried: { 'other-drive': 'trips' } }, 'cable-insulation'],
    ['sometimes, when the cable moves', { moment: 'position-or-cable', again: 'sometimes' }, 'moving-cable'],
    ['shared drive, nothing else said', { sharedDrive: 'yes' }, 'other-axis'],
  ])('%s: first %s', (_name, said, cause) => {
    expect(first(said)).toBe(cause);
  });

  test('the moment alone gives its order', () => {
    expect(sheetOf({ moment: 'when-hot' }).suspects.map(({ cause }) => cause)).toEqual(
      likelyAt('when-hot').slice(0, 6),
    );
  });

  test('two answers for one family go before one for another', () => {
    const { suspects } = sheetOf({ moment: 'on-enable', seen: ['motor-wet', 'drive-burnt'], before: ['water'] });
    expect(suspects.slice(0, 3).map(({ cause }) => cause)).toEqual(['winding-insulation', 'moisture', 'contact']);
    expect(suspects[0]?.reasons).toHaveLength(2);
  });

  test('that another drive or motor is said to run points at nothing', () => {
    expect(sheetOf({ tried: { 'other-drive': 'runs', 'other-motor': 'runs' } }).suspects).toEqual([]);
  });

  test('without the moment and without anything seen nothing is suspect', () => {
    expect(sheetOf({}).suspects).toEqual([]);
    expect(sheetOf({}).others).toEqual(everyCause);
  });
});

test('whatever is said, no family is excluded and none is named twice', () => {
  fc.assert(
    fc.property(anyCall, (facts) => {
      const { suspects, others } = callSheet(facts);
      const named = [...suspects.map(({ cause }) => cause), ...others];
      expect([...named].sort()).toEqual([...everyCause].sort());
    }),
  );
});

test('nothing that is said besides makes a family less suspect: its reasons only grow', () => {
  fc.assert(
    fc.property(anyCall, (facts) => {
      const less = callSheet({ ...nothingSaid, moment: facts.moment ?? 'on-enable', seen: facts.seen });
      const more = callSheet({ ...facts, moment: facts.moment ?? 'on-enable' });
      const all = [...more.suspects];
      for (const { cause, reasons } of less.suspects) {
        const same = all.find((suspect) => suspect.cause === cause);
        if (same !== undefined) expect(same.reasons.length).toBeGreaterThanOrEqual(reasons.length);
      }
    }),
  );
});
