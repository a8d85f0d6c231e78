import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import {
  brake,
  bridgeIs,
  busAgain,
  done,
  idle,
  insulationIs,
  lockout,
  looked,
  mechanics,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { inputIs, inputs } from './support/inputs.ts';
import { bridges, insulations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

// Own condition, no source: after fuses or a breaker opened, nothing gets power before the input was measured and passed.

const stateOf = (history: Given[]) => nextStep(visitOf(history));
const opened = (when: Symptom = 'control-off'): Given => trips(when, 'no', { came: 3, of: 3, protection: 'opened' });

const begun = (when?: Symptom): Given[] => [
  ...[looked(), opened(when), lockout(1), seen(), done('disconnect-leads')],
  ...(when === 'on-acceleration' || when === 'on-braking' ? [mechanics('free')] : []),
];
const upToInput = (when?: Symptom): Given[] => [...begun(when), bridgeIs(bridges.good), busAgain()];
const measured = (input: Given, when?: Symptom): Given[] => [
  ...[...upToInput(when), input, busAgain(), windingIs(windings.alike), idle(), insulationIs(insulations.good)],
];

describe('fuses or the breaker of the supply opened', () => {
  it.each<Symptom>(['control-off', 'on-enable', 'on-acceleration'])('%s: the input is measured, dead', (when) => {
    expect(stateOf(begun(when)).due).toBe('bridge');
    expect(stateOf(upToInput(when)).due).toBe('input-circuit');
    expect(stateOf([...upToInput(when), inputIs(inputs.sound)]).due).toBe('bus-again');
  });

  it('the braking circuit comes after it', () => {
    expect(stateOf([...upToInput('on-braking'), inputIs(inputs.sound), busAgain()]).due).toBe('braking');
  });

  it.each<[what: string, input: Given, kind: string, open: string[]]>([
    ['shorted, read twice', inputIs(inputs.shorted), 'replace', []],
    ['shorted, read once', inputIs(inputs.shortedOnce), 'undecided', []],
    ['a bus that leaks, read twice', inputIs(inputs.leaks), 'undecided', []],
    ['a fuse open, the drive sound', inputIs(inputs.fuseOnly), 'undecided', ['fuses-open']],
    ['the precharge out of reach', inputIs(inputs.prechargeInside), 'undecided', ['input-open']],
  ])('%s: nothing is switched on, and the decision is %s', (_, input, kind, open) => {
    const { due, decision, path } = stateOf(measured(input));
    expect(due).toBeUndefined();
    expect([decision?.kind, decision?.open]).toEqual([kind, open]);
    expect(path.some(({ id }) => id.startsWith('retry-') || id === 'reconnect')).toBe(false);
  });

  it('the drive is replaced for a short that was read twice, and is suspect for one reading', () => {
    expect(stateOf(measured(inputIs(inputs.shorted))).decision?.replace).toEqual([
      { part: 'drive', proofs: ['input-shorted'] },
    ]);
    expect(stateOf(measured(inputIs(inputs.shortedOnce))).decision?.suspect).toEqual([
      { part: 'drive', reasons: ['input-not-confirmed'] },
    ]);
  });

  it('a sound input lets the axis be connected and tried as a whole, without a try before', () => {
    const all = measured(inputIs(inputs.sound));
    expect(stateOf(all).due).toBe('reconnect');
    const { due, path } = stateOf([...all, done('reconnect')]);
    expect([due, path.filter(({ id }) => id.startsWith('retry-')).map(({ id }) => id)]).toEqual([
      'retry-all',
      ['retry-all'],
    ]);
  });

  it('stays open as long as nobody has measured it', () => {
    const after = [...begun(), bridgeIs(bridges.shorted), busAgain(), inputIs(inputs.prechargeInside, false)];
    expect(stateOf(after).due).toBe('input-circuit');
  });

  it('a bus that is found charged means that the lockout does not hold', () => {
    const { path } = stateOf([...upToInput(), inputIs(inputs.busCharged)]);
    expect(path.at(-1)).toMatchObject({ problem: 'bus-not-discharged' });
  });
});

describe('a record in which they held, or nobody asked', () => {
  it('does not ask for the input', () => {
    for (const protection of ['held', 'unknown', undefined] as const) {
      const symptom = trips('on-enable', 'no', { came: 3, of: 3, ...(protection && { protection }) });
      const way = [looked(), symptom, lockout(1), seen(), done('disconnect-leads'), bridgeIs(bridges.good), busAgain()];
      expect(stateOf(way).due).toBe('winding');
    }
  });

  it('a failed input counts against power all the same, and is asked for again', () => {
    const moving = [looked(), trips('on-acceleration'), lockout(1), seen(), done('disconnect-leads')];
    const way = [...moving, mechanics('free'), bridgeIs(bridges.good), busAgain(), inputIs(inputs.shorted)];
    expect(stateOf(way).path.some(({ id }) => id === 'input-circuit')).toBe(true);
    const braked = [...way, busAgain(), brake('20 Ω | 20 Ω | >1M | OL'), retry('retry-all', 'no-trip')];
    expect(stateOf(braked).path.some(({ id }) => id === 'retry-all')).toBe(false);
  });
});
