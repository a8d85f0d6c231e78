import { describe, expect, it } from 'vitest';
import type { Damage } from '../../../../src/kernel/vocabulary.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { InspectAnswer } from '../../../../src/visit/steps/inspect/question.ts';
import {
  bridgeIs,
  busAgain,
  done,
  idle,
  insulationIs,
  isolationIs,
  lockout,
  looked,
  mechanics,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const stateOf = (history: Given[]) => nextStep(visitOf(history));

/** Trips while it moves; everything is measured. */
const measured = (damage: Partial<InspectAnswer['seen']> = {}, bridge = bridges.good): Given[] => [
  looked(),
  trips('on-acceleration'),
  lockout(1),
  seen(damage),
  done('disconnect-leads'),
  mechanics('free'),
  bridgeIs(bridge),
  busAgain(),
  windingIs(windings.alike),
  idle(),
  insulationIs(insulations.good),
];

describe('a symptom that is corrected after the output stage was found bad', () => {
  it.each(['on-enable', 'control-off'] as const)('%s: nothing is switched on any more', (when) => {
    const { path, decision } = stateOf([...measured({}, bridges.shorted), trips(when)]);
    expect(path.filter(({ id }) => id.startsWith('retry-'))).toEqual([]);
    expect(decision?.replace).toEqual([{ part: 'drive', proofs: ['bridge-bad'] }]);
  });
});

describe('a motor or motor cable that is seen damaged and measures well', () => {
  const damages: [keyof InspectAnswer['seen'], Damage, string][] = (['burnt', 'wet', 'chafed'] as const).flatMap(
    (damage) => [
      ['motor', damage, 'motor-damaged'],
      ['motorCable', damage, 'cable-damaged'],
    ],
  );
  it.each(damages)('%s %s: the axis is not tried, and the decision names it', (part, damage, open) => {
    const all = [...measured({ [part]: damage }), isolationIs(isolations.bothGood)];
    const { decision, due } = stateOf(all);
    expect(due).toBeUndefined();
    expect(decision?.kind).toBe('undecided');
    expect(decision?.open).toContain(open);
    expect(decision?.good).not.toContain(part === 'motor' ? 'motor' : 'motor-cable');
  });

  it('seen only after the axis was tried: "no fault found" is withdrawn', () => {
    const tried: Given[] = [...measured(), done('reconnect'), retry('retry-all', 'no-trip')];
    expect(stateOf(tried).decision?.kind).toBe('no-fault-found');
    expect(stateOf([...tried, seen({ motor: 'wet' })]).decision?.kind).not.toBe('no-fault-found');
  });
});

describe('the PE core that came off for the insulation test', () => {
  const corrected = [...measured(), trips('on-enable')];

  it('is put back before any step with power, locked out', () => {
    expect(stateOf(corrected).due).toBe('connect-pe');
    expect(stateOf([...corrected, done('connect-pe')]).due).toBe('retry-leads-off');
  });

  it('and is taken off again for the next test', () => {
    const off: Given[] = [...corrected, done('connect-pe'), insulationIs(insulations.low)];
    expect(stateOf(off).due).not.toMatch(/^retry-/);
  });
});

it('a damaged feedback cable is not plugged in for a trial: the device stays open', () => {
  const gone: Given[] = [
    looked(),
    trips('control-off'),
    lockout(1),
    seen({ feedbackCable: 'chafed' }),
    done('unplug-feedback'),
    retry('retry-feedback-off', 'no-trip'),
  ];
  const { decision } = stateOf(gone);
  expect(decision?.replace.map(({ part }) => part)).toEqual(['feedback-cable']);
  expect(decision?.open).toContain('feedback-device-untested');
});

it('a trip that a correction has taken off the way prevents a trial of the axis, and is named', () => {
  const left: Given[] = [
    looked(),
    trips('control-off'),
    lockout(1),
    seen(),
    done('unplug-feedback'),
    retry('retry-feedback-off', 'trips'),
    trips('now-and-then'),
    lockout(1),
    seen(),
    done('disconnect-leads'),
    mechanics('free'),
    bridgeIs(bridges.good),
    busAgain(),
    windingIs(windings.alike),
    idle(),
    insulationIs(insulations.good),
  ];
  expect(stateOf(left).decision?.kind).toBe('undecided');
  expect(stateOf(left).decision?.open).toContain('left-evidence');
});
