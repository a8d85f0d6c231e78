import { describe, expect, it } from 'vitest';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { LockoutAnswer } from '../../../../src/visit/steps/lockout/question.ts';
import { typed } from '../../../support/typed.ts';
import {
  bridgeIs,
  busAgain,
  done,
  lockout,
  looked,
  mechanics,
  proveAgain,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const volts = (text: string) => typed(text, 'voltage');
const begun: Given[] = [looked(), trips('on-acceleration')];

describe('the lockout passes only when every point is dead', () => {
  it.each<[what: string, change: Partial<LockoutAnswer>, problem: string]>([
    ['PE not proved', { peProved: false }, 'pe-not-proved'],
    ['a filter holds DC', { supplyVoltage: volts('310 V') }, 'supply-live'],
    ['the supply not measured', { supplyVoltage: volts('') }, 'supply-not-measured'],
    ['a motor turns', { outputVoltage: volts('62 V') }, 'output-live'],
    ['the output not measured', { outputVoltage: volts('') }, 'output-not-measured'],
    ['a charged bus', { busVoltage: volts('565 V') }, 'bus-not-discharged'],
    ['a range exceeded', { supplyVoltage: volts('OL') }, 'supply-live'],
  ])('%s', (_, change, problem) => {
    expect(nextStep(visitOf([...begun, lockout(1, change)])).path.at(-1)).toMatchObject({ id: 'lockout-1', problem });
  });
});

describe('the bus is measured again', () => {
  const off: Given[] = [...begun, lockout(1), seen(), done('disconnect-leads')];
  const moved: Given[] = [...off, mechanics('free')];

  it('after the axis was moved by hand with its leads on, as in a record of the older order', () => {
    const withLeads: Given[] = [...begun, lockout(1), seen(), mechanics('free')];
    expect(nextStep(visitOf(withLeads)).due).toBe('bus-again');
    expect(nextStep(visitOf([...withLeads, busAgain('60 V')])).path.at(-1)?.problem).toBe('bus-not-discharged');
    expect(nextStep(visitOf([...withLeads, busAgain()])).due).toBe('disconnect-leads');
  });

  it('not if its leads were off, nor if nobody moved it', () => {
    expect(nextStep(visitOf(moved)).due).toBe('bridge');
    const still: Given[] = [...begun, lockout(1), seen(), mechanics('held')];
    expect(nextStep(visitOf(still)).due).toBe('disconnect-leads');
  });

  it('after readings at the output stage', () => {
    const read: Given[] = [...moved, bridgeIs(bridges.good)];
    expect(nextStep(visitOf(read)).due).toBe('bus-again');
    expect(nextStep(visitOf([...read, busAgain()])).due).toBe('winding');
  });
});

describe('after a break of the work', () => {
  const before: Given[] = [...begun, lockout(1), seen(), done('disconnect-leads'), mechanics('not-checked')];
  const after = (...more: Given[]) => nextStep(visitOf([...before, ...more], before.length));

  it('the drive is proved dead again, and nothing else is asked for twice', () => {
    expect(after().due).toBe('prove-again');
    expect(after(proveAgain({ waited: false })).path.at(-1)?.problem).toBe('not-waited');
    expect(after(proveAgain()).due).toBe('bridge');
  });

  it('before power too, and the support of every axis that may fall is confirmed before that', () => {
    const onEnable: Given[] = [
      looked(),
      trips('on-enable', 'yes'),
      done('support-axis'),
      lockout(1),
      seen(),
      done('disconnect-leads'),
      bridgeIs(bridges.good),
      busAgain(),
      windingIs(windings.alike),
    ];
    const later = (...more: Given[]) => nextStep(visitOf([...onEnable, ...more], onEnable.length)).due;
    expect(later()).toBe('support-again');
    expect(later(['support-again', { done: false }])).toBe('support-again');
    expect(later(done('support-again'))).toBe('prove-again');
    expect(later(done('support-again'), proveAgain())).toBe('retry-leads-off');
  });
});
