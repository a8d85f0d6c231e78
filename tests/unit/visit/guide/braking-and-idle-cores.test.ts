import { describe, expect, it } from 'vitest';
import { brakingBad, brakingState } from '../../../../src/visit/guide/braking.ts';
import { idleCoreFree, idleCoreLow, idleCoresKnown } from '../../../../src/visit/guide/idle-cores.ts';
import { typed } from '../../../support/typed.ts';
import { brake, idle } from './support/answers.ts';
import { type Given, visitOf } from './support/visit.ts';

const state = (text: string, again = true) => {
  const found = brakingState(visitOf([brake(text, again)]));
  return found && `${found.resistor} ${found.switch}`;
};
const bad = (...given: Given[]) => brakingBad(visitOf(given));

// 25 % off the plate, 1 MΩ to PE, 1 kΩ for a short: common practice, no source.
describe('the braking circuit', () => {
  it.each<[plateEndsPeBus: string, state: string]>([
    ['20 Ω | 20 Ω | >1M | OL', 'good good'],
    ['20 Ω | 15 Ω | >1M | OL', 'good good'],
    ['20 Ω | 14.9 Ω | >1M | OL', 'bad good'],
    ['20 Ω | 25 Ω | >1M | OL', 'good good'],
    ['20 Ω | 25.1 Ω | >1M | OL', 'bad good'],
    ['20 Ω | 20 Ω | 1M | OL', 'good good'],
    ['20 Ω | 20 Ω | 990k | OL', 'bad good'],
    ['20 Ω | 20 Ω | <1M | OL', 'unclear good'],
    ['20 Ω | 20 Ω | >500k | OL', 'unclear good'],
    ['20 Ω | 20 Ω | >1M | 1000 Ω', 'good low'],
    ['20 Ω | 20 Ω | >1M | 1001 Ω', 'good good'],
    ['20 Ω | 20 Ω | >1M | >500 Ω', 'good good'],
    ['20 Ω | 20 Ω | >1M | <5k', 'good unclear'],
    ['20 Ω | OL | >1M | OL', 'unclear good'],
    ['20 Ω | >26 Ω | >1M | OL', 'bad good'],
    ['20 Ω | <14 Ω | >1M | OL', 'bad good'],
    ['20 Ω | <20 Ω | >1M | OL', 'unclear good'],
    ['20 Ω |  | >1M | OL', 'unclear good'],
    ['20 Ω | 20 Ω |  | ', 'unclear unclear'],
  ])('%s: %s', (text, expected) => {
    expect(state(text)).toBe(expected);
  });

  it('is never good beside a plate that nobody read, or of which only a bound is known', () => {
    for (const plate of ['', 'OL', '>20 Ω', '<20 Ω', '>1 Ω']) {
      expect(state(`${plate} | 20 Ω | >1M | OL`)).toBe('unclear good');
    }
    expect(state('<20 Ω | 60 Ω | >1M | OL')).toBe('bad good');
    expect(state('>20 Ω | 10 Ω | >1M | OL')).toBe('bad good');
  });

  it('is unknown inside the drive or before it was asked for, and without one there is nothing to switch', () => {
    const fitted = (where: 'none' | 'inside' | 'not-done') => {
      const [, answer] = brake('20 Ω | 60 Ω | 1k | 5 Ω');
      return brakingState(visitOf([['braking', { ...answer, fitted: where }] as Given]));
    };
    expect(fitted('none')).toEqual({ resistor: 'none', switch: 'unclear', readTwice: false });
    for (const where of ['inside', 'not-done'] as const)
      expect(fitted(where)).toEqual({ resistor: 'unclear', switch: 'unclear', readTwice: false });
    expect(brakingState(visitOf([]))).toBeUndefined();
  });

  it('knows whether it was read twice', () => {
    const twice = (again: boolean) => brakingState(visitOf([brake('20 Ω | 20 Ω | >1M | OL', again)]))?.readTwice;
    expect([twice(true), twice(false)]).toEqual([true, false]);
  });

  it('speaks against power by its resistor or its switch', () => {
    expect(bad(brake('20 Ω | 60 Ω | >1M | OL'))).toBe(true);
    expect(bad(brake('20 Ω | 20 Ω | >1M | 5 Ω'))).toBe(true);
    expect(bad(brake('20 Ω | 20 Ω | >1M | OL'))).toBe(false);
    expect(bad(brake('20 Ω |  |  | '))).toBe(false);
    expect(bad()).toBe(false);
  });
});

// 1 MΩ: project judgement, no source.
describe('idle cores', () => {
  it.each<[lowest: string, says: string]>([
    ['>50M', 'free'],
    ['1M', 'free'],
    ['999k', 'low'],
    ['10 Ω', 'low'],
    ['<500k', 'low'],
    ['<1M', 'unclear'],
    ['<5M', 'unclear'],
    ['OL', 'unclear'],
    ['>500k', 'unclear'],
    ['', 'unclear'],
  ])('%s: %s', (lowest, says) => {
    expect(idleCoreFree(typed(lowest))).toBe(says);
  });

  const known = (...given: Given[]) => [idleCoreLow(visitOf(given)), idleCoresKnown(visitOf(given))];

  it.each<[what: string, given: Given[], low: boolean, known: boolean]>([
    ['not asked for', [], false, false],
    ['none in this cable', [idle('none')], false, true],
    ['none, though a reading is there', [idle('none', '10 Ω')], false, true],
    ['not done', [idle('not-done')], false, false],
    ['not done, though a reading is there', [idle('not-done', '10 Ω')], false, false],
    ['measured and free', [idle('measured', '>50M')], false, true],
    ['measured and low', [idle('measured', '10 Ω')], true, false],
    ['measured and unclear', [idle('measured', 'OL')], false, false],
  ])('%s', (_, given, low, all) => {
    expect(known(...given)).toEqual([low, all]);
  });
});
