import { describe, expect, it } from 'vitest';
import type { IsolationFinding } from '../../../../../src/calculators/isolation/rule/input.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import {
  assess,
  badJoined,
  badMotor,
  type Change,
  cable,
  find,
  goodCable,
  goodMotor,
  joined,
  linesOf,
  motor,
  steps,
} from './separated.ts';

const compared: IsolationFinding['code'][] = [
  'cores-leak-to-each-other',
  'core-leaks-to-idle-core',
  'good-joined-bad-part',
  'symptom-outweighs-joined',
  'joined-good',
  'bad-joined-good-parts',
  'part-not-known',
  'also-test-other-part',
  'joined-pe-again-short',
  'joined-pe-suspect',
  'cable-pe-broken-implied',
];
const oneBadCore = cable('5G | 2M | 5G', '5G | 2M | 5G');
const bonded = (row: string) => ({ ...goodCable, bonded: typedPhases(row) });
const openPe = joined('600M | 600M | 600M', 'OL');
const noMotorPe = motor('5G | 5G | 5G', 'OL');

describe('the comparison of the stages', () => {
  const rows: [what: string, Change, verdict: string, lines: string[]][] = [
    ['all good', { ...goodCable, ...goodMotor }, 'go', []],
    ['joined good alone', {}, 'undecided', ['joined-good undecided']],
    ['joined and cable good', goodCable, 'undecided', ['joined-good undecided']],
    ['joined good, symptom', { suspectedAnyway: true }, 'undecided', ['symptom-outweighs-joined undecided']],
    [
      'joined good, motor bad',
      badMotor,
      'undecided',
      ['good-joined-bad-part undecided', 'joined-good undecided', 'also-test-other-part note'],
    ],
    ['joined good, both bad', { ...oneBadCore, ...badMotor }, 'no-go', ['good-joined-bad-part undecided']],
    [
      'joined good, two cores leak',
      { ...bonded('2M | 3M | 5G'), ...goodMotor },
      'no-go',
      ['cores-leak-to-each-other caution bondedU bondedV'],
    ],
    [
      'joined good, one core leaks where only the bonded row grounds',
      { ...bonded('2M | 5G | 5G'), ...goodMotor },
      'no-go',
      ['core-leaks-to-idle-core caution bondedU'],
    ],
    [
      'joined good, a core that leaks to ground too must have shown',
      { ...oneBadCore, ...goodMotor },
      'no-go',
      ['good-joined-bad-part undecided'],
    ],
    [
      'joined good, cores leak and the motor is bad',
      { ...bonded('2M | 3M | 5G'), ...badMotor },
      'no-go',
      ['good-joined-bad-part undecided'],
    ],
    ['joined bad alone', badJoined, 'no-go', ['part-not-known note']],
    ['joined bad, cable good', { ...badJoined, ...goodCable }, 'no-go', ['part-not-known note']],
    ['joined bad, cable bad', { ...badJoined, ...oneBadCore }, 'no-go', ['also-test-other-part note']],
    ['joined bad, both bad', { ...badJoined, ...oneBadCore, ...badMotor }, 'no-go', []],
    ['joined bad, motor bad, cable good', { ...badJoined, ...goodCable, ...badMotor }, 'no-go', []],
    [
      'joined bad, motor bad, cable unfinished',
      { ...badJoined, cable: goodCable.cable, ...badMotor },
      'no-go',
      ['also-test-other-part note'],
    ],
    [
      'joined bad, both good',
      { ...badJoined, ...goodCable, ...goodMotor },
      'undecided',
      ['bad-joined-good-parts undecided'],
    ],
    [
      'joined undecided, cable bad',
      { ...joined('OL | OL | OL'), ...oneBadCore },
      'no-go',
      ['also-test-other-part note'],
    ],
    ['joined undecided, nothing else', joined('OL | OL | OL'), 'undecided', []],
    ['PE open', openPe, 'no-go', ['joined-pe-suspect caution']],
    [
      'PE open, the motor has its own',
      { ...openPe, ...goodMotor },
      'no-go',
      ['joined-pe-suspect caution', 'cable-pe-broken-implied caution joinedPE motorPE'],
    ],
    [
      'PE open, nor has the motor',
      { ...openPe, ...noMotorPe },
      'no-go',
      ['also-test-other-part note', 'joined-pe-suspect caution'],
    ],
    ['PE open twice', { ...openPe, peAgain: typed('OL') }, 'no-go', []],
    [
      'PE open, then short',
      { ...openPe, peAgain: typed('0.2 Ω') },
      'undecided',
      ['joined-pe-again-short undecided peAgain'],
    ],
    ['PE short, then open', { peAgain: typed('OL') }, 'no-go', ['joined-good undecided', 'joined-pe-suspect caution']],
  ];
  it.each(rows)('%s', (what, change, verdict, lines) => {
    expect(assess(change).verdict).toBe(verdict);
    // With PE open stage 1 is not good, so that it concludes nothing about the parts.
    const wanted = what === 'PE short, then open' ? lines.slice(1) : lines;
    expect(linesOf(change, compared)).toEqual(wanted);
  });

  it('names the core that leaks to an idle one', () => {
    expect(find({ ...bonded('5G | 5G | 2M'), ...goodMotor }, 'core-leaks-to-idle-core').phase).toBe('W');
  });
});

describe('the second reading of PE', () => {
  const rows: [first: string, again: string, code: IsolationFinding['code'], status: string][] = [
    ['0.2 Ω', '', 'joined-pe-short', 'proven-good'],
    ['0.2 Ω', '0.2 Ω', 'joined-pe-short', 'proven-good'],
    ['0.2 Ω', '2 Ω', 'joined-pe-higher-than-expected', 'undecided'],
    ['0.2 Ω', '0 MΩ', 'joined-pe-not-proven', 'undecided'],
    ['0.2 Ω', 'OL', 'joined-pe-not-short', 'suspect'],
    ['2 Ω', '0.2 Ω', 'joined-pe-higher-than-expected', 'undecided'],
    ['2 Ω', 'OL', 'joined-pe-not-short', 'suspect'],
    ['OL', '0.2 Ω', 'joined-pe-not-short', 'undecided'],
    ['OL', 'OL', 'joined-pe-not-short', 'suspect'],
    ['OL', '', 'joined-pe-not-short', 'suspect'],
  ];
  it.each(rows)('after “%s” reads “%s”: the worse counts', (first, again, code, status) => {
    const change = { ...joined('600M | 600M | 600M', first), peAgain: typed(again), ...goodCable, ...goodMotor };
    expect(find(change, code).readings).toEqual(['joinedPE']);
    expect(assess(change).parts.protectiveConductor).toBe(status);
  });

  it.each([
    ['OL', '', ['read-pe-again', 'find-broken-pe']],
    ['OL', 'OL', ['find-broken-pe']],
    ['OL', '0.2 Ω', ['find-broken-pe']],
    ['0.2 Ω', 'OL', ['read-pe-again', 'find-broken-pe']],
    ['2 Ω', '', ['measure-pe-low-range']],
  ])('after “%s”, “%s” asks for %j first', (first, again, wanted) => {
    const change = { ...joined('600M | 600M | 600M', first), peAgain: typed(again) };
    expect(steps(change).filter((code) => code.includes('pe'))).toEqual(wanted);
  });

  it('that is open says what else has to be known of the frame', () => {
    expect(linesOf(openPe, ['pe-frame-not-stated'])).toEqual(['pe-frame-not-stated note joinedPE']);
    expect(linesOf({ ...openPe, frameEarthed: 'only-pe' }, ['pe-frame-not-stated'])).toEqual([]);
  });
});

describe('idle cores that may hang free', () => {
  it('leave both parts open', () => {
    for (const idleCores of ['free', 'not-stated'] as const) {
      const { verdict, parts } = assess({ ...goodCable, ...goodMotor, idleCores });
      expect(verdict).toBe('undecided');
      expect(parts).toMatchObject({ cable: 'undecided', motor: 'undecided' });
      expect(steps({ ...goodCable, ...goodMotor, idleCores })).toEqual(['join-idle-cores']);
    }
  });
});
