import { describe, expect, it } from 'vitest';
import { branchNames } from '../../../../src/calculators/trip-trace/headline.ts';
import type { Branch } from '../../../../src/calculators/trip-trace/rule/input.ts';
import type { Cause, Symptom } from '../../../../src/kernel/vocabulary.ts';
import { everyCause, possibleCauses } from '../../../../src/visit/guide/causes.ts';
import { decide } from '../../../../src/visit/guide/decision.ts';
import { measureAfter, wantsHandTest } from '../../../../src/visit/guide/routes.ts';
import { rules } from '../../../../src/visit/steps/rules.ts';
import { bend, bridgeIs, idle, insulationIs, isolationIs, retry, seen, trips, windingIs } from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

// No source: a recording of the trip orders what is looked at, and may add a measurement. It proves and excludes nothing.

const branches = Object.keys(branchNames) as Branch[];
const speaks = (...speaksFor: Branch[]): Given => ['recording', { speaksFor, read: true }];
const notRead: Given = ['recording', { speaksFor: [], read: false }];

describe('the step', () => {
  it.each([
    ['yes', 'recording'],
    ['no', 'inspect'],
    ['unknown', 'inspect'],
  ] as const)('recorded, %s: then %s', (recorded, then) => {
    const visit = visitOf([trips('on-enable', 'no', { recorded })]);
    expect(rules.symptom.next(visit, visit)).toBe(then);
  });

  it('is not asked of a record that does not know of it, and the visit goes on after it', () => {
    const older = visitOf([trips('on-enable')]);
    expect(rules.symptom.next(older, older)).toBe('inspect');
    expect(rules.recording.next(older, older)).toBe('inspect');
  });
});

describe('the possible causes', () => {
  const moments: Symptom[] = ['control-off', 'on-enable', 'on-acceleration', 'on-braking', 'when-hot', 'now-and-then'];

  it.each<[Branch, Cause]>([
    ['short-outside', 'output-stage'],
    ['earth-path', 'cable-insulation'],
    ['inside-drive', 'output-stage'],
    ['sensing', 'current-sensor'],
    ['feedback', 'feedback-signal'],
    ['open-core', 'moving-cable'],
    ['mechanics', 'load'],
    ['tuning', 'tuning'],
    ['supply-braking', 'supply'],
  ])('begin with what it speaks for: %s, %s', (branch, first) => {
    for (const when of moments) expect(possibleCauses(visitOf([trips(when), speaks(branch)]))[0]).toBe(first);
  });

  it('stay the same ones, at a moment that nobody saw too', () => {
    for (const when of [...moments, 'unknown'] as const) {
      const visit: Given[] = [['symptom', { when, gravityLoaded: 'no' }], speaks(...branches)];
      expect(possibleCauses(visitOf(visit)).sort()).toEqual([...everyCause].sort());
    }
  });
});

describe('the measurements', () => {
  const after = (id: Parameters<typeof measureAfter>[0], way: Given[]) => measureAfter(id, visitOf(way), visitOf(way));
  const enable = [trips('on-enable'), bridgeIs(bridges.good), windingIs(windings.alike)];

  it('get the braking circuit, the moving cable and the hand test besides, if it speaks for them', () => {
    expect(after('bridge', [...enable, speaks('supply-braking')])).toBe('braking');
    expect(after('retry-leads-off', [...enable, retry('retry-leads-off', 'no-trip'), speaks('open-core')])).toBe(
      'bend-test',
    );
    const hand = (when: Symptom) => {
      const visit = visitOf([trips(when), speaks('mechanics')]);
      return wantsHandTest(visit, visit);
    };
    expect([hand('on-enable'), hand('control-off')]).toEqual([true, false]);
  });

  it('lose none, whatever it speaks for', () => {
    const sequence = (way: Given[]) => {
      const steps: string[] = [];
      let id: ReturnType<typeof measureAfter> | undefined;
      do {
        id = after(id as Parameters<typeof measureAfter>[0], way);
        steps.push(id);
      } while (['bridge', 'braking', 'winding', 'retry-leads-off', 'bend-test', 'idle-cores'].includes(id));
      return steps;
    };
    for (const when of ['on-enable', 'on-acceleration', 'on-braking', 'position-or-cable'] as const) {
      const way: Given[] = [trips(when), bridgeIs(bridges.good), windingIs(windings.alike)];
      const without = sequence(way);
      for (const recording of [notRead, ...branches.map((branch) => speaks(branch))]) {
        const asked = sequence([...way, recording]);
        expect(without.filter((step) => !asked.includes(step))).toEqual([]);
      }
    }
  });
});

describe('the decision', () => {
  const measured: Given[] = [
    ...[trips('on-enable'), seen(), bridgeIs(bridges.good), windingIs(windings.alike)],
    ...[idle(), insulationIs(insulations.good)],
  ];
  const itemOf: Partial<Record<Branch, string>> = { 'open-core': 'bend-test-open', 'supply-braking': 'braking-open' };
  const visits: Record<string, Given[]> = {
    'all passed': [...measured, retry('retry-all', 'trips')],
    'no trip any more': [...measured, retry('retry-all', 'no-trip')],
    'a shorted stage': [...measured, bridgeIs(bridges.shorted)],
    'a bad motor': [...measured, isolationIs(isolations.motorBad)],
    'a bad cable': [...measured, isolationIs(isolations.cableBad)],
    'half measured': [trips('on-acceleration'), bridgeIs(bridges.good)],
    'a bent cable': [trips('position-or-cable'), bend('steady')],
  };

  it.each(Object.entries(visits))('%s: the same parts and proofs, whatever it speaks for', (_, way) => {
    const decided = (given: Given[]) => {
      const { possible, ...rest } = decide(visitOf(given), visitOf(given));
      return { ...rest, possible: [...possible].sort() };
    };
    const without = decided(way);
    expect(decided([...way, notRead])).toEqual(without);
    for (const branch of branches) {
      const { kind, open, ...rest } = decided([...way, speaks(branch)]);
      const { kind: kindWithout, open: openWithout, ...restWithout } = without;
      // What it adds to the measurements is open until it is known, so that a visit may end undecided, and nothing more.
      const added = open.filter((item) => !openWithout.includes(item));
      expect(added).toEqual(added.length > 0 ? [itemOf[branch]] : []);
      expect(openWithout.filter((item) => !open.includes(item))).toEqual([]);
      expect([kindWithout, 'undecided']).toContain(kind);
      if (added.length === 0) expect([kind, rest]).toEqual([kindWithout, restWithout]);
      expect(rest.replace).toEqual(restWithout.replace);
      expect(rest.suspect).toEqual(restWithout.suspect);
      expect(restWithout.good).toEqual(expect.arrayContaining(rest.good));
    }
  });

  it('lists what it added as open until it is known', () => {
    const open = (...more: Given[]) => {
      const visit = visitOf([...measured, ...more]);
      return decide(visit, visit).open;
    };
    expect(open(speaks('open-core'))).toContain('bend-test-open');
    expect(open(speaks('open-core'), bend('steady'))).not.toContain('bend-test-open');
    expect(open(speaks('supply-braking'))).toContain('braking-open');
  });
});
