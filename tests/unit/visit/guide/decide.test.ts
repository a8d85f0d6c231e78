import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import { decide } from '../../../../src/visit/guide/decision.ts';
import {
  bridgeIs,
  done,
  idle,
  insulationIs,
  isolationIs,
  lockout,
  mechanics,
  motorWindingIs,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const measured = (when: Symptom = 'on-acceleration'): Given[] => [
  trips(when),
  lockout(1),
  seen(),
  done('disconnect-leads'),
  mechanics('free'),
  bridgeIs(bridges.good),
  windingIs(windings.alike),
  idle(),
  insulationIs(insulations.good),
];
const tried = (result: 'trips' | 'no-trip'): Given[] => [done('reconnect'), retry('retry-all', result)];
const decided = (history: Given[], record = history) => decide(visitOf(history), visitOf(record));

describe('the kind of a decision', () => {
  const rows: [what: string, history: Given[], kind: string][] = [
    ['the trip stays away', [...measured(), ...tried('no-trip')], 'no-fault-found'],
    [
      'it trips although everything passed',
      [...measured(), isolationIs(isolations.bothGood), ...tried('trips')],
      'inconclusive',
    ],
    ['it was not tried', measured(), 'undecided'],
    ['a part is proven bad', [...measured(), bridgeIs(bridges.shorted)], 'replace'],
    ['a part is suspect', [...measured(), bridgeIs(bridges.shortedOnce)], 'undecided'],
    [
      'one proven and one suspect',
      [...measured(), bridgeIs(bridges.shorted), motorWindingIs(windings.contact)],
      'replace',
    ],
    ['the axis is stiff', [...measured(), mechanics('stiff')], 'mechanical'],
    [
      'the axis is stiff and something else is open',
      [...measured(), mechanics('stiff'), bridgeIs(bridges.tooClose)],
      'undecided',
    ],
    [
      'something is open although the trip stays away',
      [...measured(), bridgeIs(bridges.tooClose), ...tried('no-trip')],
      'undecided',
    ],
  ];
  it.each(rows)('%s: %s', (_, history, kind) => {
    expect(decided(history).kind).toBe(kind);
  });
});

describe('a decision', () => {
  it('names what it replaces and suspects, and what stays good', () => {
    const { replace, suspect, good, possible, open } = decided([
      ...measured(),
      bridgeIs(bridges.shorted),
      motorWindingIs(windings.contact),
    ]);
    expect(replace).toEqual([{ part: 'drive', proofs: ['bridge-bad'] }]);
    expect(suspect).toEqual([{ part: 'motor', reasons: ['winding-not-confirmed'] }]);
    expect(good).toEqual(['motor-cable']);
    expect(possible).toEqual([]);
    expect(open).toEqual([]);
  });

  it('calls nothing good that passed at rest while it still trips', () => {
    const { good, possible } = decided([...measured(), isolationIs(isolations.bothGood), ...tried('trips')]);
    expect(good).toEqual([]);
    expect(possible.length).toBeGreaterThan(0);
  });

  it('calls good what passed if the trip stays away', () => {
    expect(decided([...measured(), ...tried('no-trip')]).good).toEqual(['drive', 'motor', 'motor-cable']);
    expect(decided([...measured(), mechanics('stiff')]).good).toEqual(['drive', 'motor', 'motor-cable']);
  });

  it('keeps the readings that were taken as the baseline', () => {
    expect(decided(measured()).baseline).toEqual(['bridge', 'insulation', 'winding']);
    const all = [...measured(), isolationIs(isolations.bothGood), motorWindingIs(windings.alike)];
    expect(decided(all).baseline).toEqual(['bridge', 'insulation', 'isolation', 'winding', 'winding-motor']);
    expect(decided([trips('on-enable')]).baseline).toEqual([]);
  });
});

describe('what a correction has taken off the way', () => {
  const way = [...measured(), ...tried('no-trip')];

  it('is open if it speaks against power, and the way does not say so itself', () => {
    const left = decided(way, [...way, retry('retry-leads-off', 'trips')]);
    expect(left.open).toEqual(['left-evidence']);
    expect(left.kind).toBe('undecided');
    expect(decided(way).open).toEqual([]);
    const same = decided([...way, bridgeIs(bridges.shortedOnce)]);
    expect(same.open).not.toContain('left-evidence');
  });

  it('keeps the drive from being good if it is of the drive, and other parts not', () => {
    const stiff = [...measured(), mechanics('stiff')];
    expect(decided(stiff, [...stiff, retry('retry-leads-off', 'trips')]).good).not.toContain('drive');
    const convicted = [...measured(), isolationIs(isolations.motorBad)];
    expect(decided(convicted).good).toContain('drive');
    for (const step of ['retry-feedback-off', 'retry-leads-off', 'retry-stripped'] as const) {
      expect(decided(convicted, [...convicted, retry(step, 'trips')]).good).toEqual(
        decided(convicted).good.filter((part) => part !== 'drive'),
      );
    }
    const bridge = decided(convicted, [...convicted, bridgeIs(bridges.shortedOnce)]);
    expect(bridge.good).not.toContain('drive');
    const other = decided(convicted, [...convicted, mechanics('stiff')]);
    expect(other.good).toContain('drive');
  });

  it('that is proven bad there is neither good nor excluded', () => {
    const convicted = [...measured(), isolationIs(isolations.motorBad)];
    const record = [...convicted, bridgeIs(bridges.shorted)];
    const { good, excluded, replace } = decided(convicted, record);
    expect(replace.map(({ part }) => part)).toEqual(['motor']);
    expect(good).not.toContain('drive');
    expect(excluded.map(({ part }) => part)).not.toContain('drive');
    expect(decided(convicted).excluded.map(({ part }) => part)).toContain('drive');
  });
});
