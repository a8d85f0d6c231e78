import { describe, expect, it } from 'vitest';
import type { IsolationFinding } from '../../../../../src/calculators/isolation/rule/input.ts';
import { typed } from '../../../../support/typed.ts';
import {
  assess,
  badJoined,
  badMotor,
  type Change,
  cable,
  goodCable,
  goodMotor,
  joined,
  linesOf,
  motor,
  steps,
} from './separated.ts';

const second: IsolationFinding['code'][] = [
  'part-suspect',
  'part-convicted',
  'again-bad',
  'again-unclear',
  'dried-and-good',
];
const oneCore = cable('5G | 2M | 5G', '5G | 2M | 5G');
const of = (part: 'Cable' | 'Motor', again: string, dried?: 'yes', sister?: string): Change => ({
  [`moreOf${part}`]: {
    again: typed(again),
    ...(dried && { dried }),
    ...(sister !== undefined && { sister: typed(sister) }),
  },
});
describe('a second reading', () => {
  const bad = { ...badJoined, ...oneCore, ...goodMotor };
  const badM = { ...badJoined, ...goodCable, ...badMotor };
  const unclear = ['again-unclear undecided cableAgain', 'part-suspect caution'];
  const still = (part: string) => [`again-bad fail ${part}Again`, 'part-suspect caution'];
  const convicted = (part: string) => [`again-bad fail ${part}Again`, `part-convicted note ${part}Again`];
  const rows: [what: string, Change, verdict: string, parts: [string, string], lines: string[], next: string[]][] = [
    [
      'that does not tell',
      { ...bad, ...of('Cable', 'OL') },
      'no-go',
      ['suspect', 'proven-good'],
      unclear,
      ['state-cable-length', 'read-cable-again'],
    ],
    [
      'as bad, wet',
      { ...bad, ...of('Cable', '2M') },
      'no-go',
      ['suspect', 'proven-good'],
      still('cable'),
      ['state-cable-length', 'read-cable-again'],
    ],
    [
      'as bad, dry',
      { ...bad, ...of('Cable', '2M', 'yes') },
      'no-go',
      ['suspect', 'proven-good'],
      still('cable'),
      ['state-cable-length', 'compare-cable'],
    ],
    [
      'as bad, far below its own',
      { ...bad, ...of('Cable', '2M', 'yes', '500M') },
      'no-go',
      ['proven-bad', 'proven-good'],
      convicted('cable'),
      ['state-cable-length', 'replace-cable'],
    ],
    [
      'good',
      { ...bad, ...of('Cable', '5G', 'yes') },
      'undecided',
      ['undecided', 'proven-good'],
      ['dried-and-good undecided cableAgain'],
      ['complete-cable', 'state-cable-length', 'find-the-water'],
    ],
    [
      'good, by a multimeter',
      { ...bad, ...of('Cable', '5G', 'yes'), testVoltage: typed('9 V', 'voltage') },
      'no-go',
      ['suspect', 'undecided'],
      unclear,
      ['use-insulation-tester', 'complete-motor', 'state-cable-length', 'read-cable-again'],
    ],
    [
      'of the motor, wet',
      { ...badM, ...of('Motor', '2M') },
      'no-go',
      ['proven-good', 'suspect'],
      still('motor'),
      ['read-motor-again'],
    ],
    [
      'of the motor, dry and above its minimum',
      { ...joined('20M | 20M | 20M'), ...goodCable, ...motor('20M | 20M | 20M'), ...of('Motor', '20M', 'yes') },
      'no-go',
      ['proven-good', 'suspect'],
      still('motor'),
      ['compare-motor'],
    ],
    [
      'of the motor, good',
      { ...badM, ...of('Motor', '5G', 'yes') },
      'undecided',
      ['proven-good', 'undecided'],
      ['dried-and-good undecided motorAgain'],
      ['complete-motor', 'find-the-water'],
    ],
    [
      'of a good motor that is bad',
      { ...goodCable, ...goodMotor, ...of('Motor', '2M') },
      'undecided',
      ['undecided', 'undecided'],
      still('motor'),
      ['re-measure-contradiction'],
    ],
    [
      'of a good motor that is good',
      { ...goodCable, ...goodMotor, ...of('Motor', '5G') },
      'go',
      ['proven-good', 'proven-good'],
      [],
      ['neither-suspect'],
    ],
    [
      'of a good motor that does not tell',
      { ...goodCable, ...goodMotor, ...of('Motor', 'OL') },
      'go',
      ['proven-good', 'proven-good'],
      [],
      ['neither-suspect'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, [ofCable, ofMotor], lines, next) => {
    expect(linesOf(change, second)).toEqual(lines);
    expect(assess(change)).toMatchObject({ verdict, parts: { cable: ofCable, motor: ofMotor } });
    expect(steps(change)).toEqual(next);
  });

  it('convicts no cable whose ends may still be connected, although both readings fail', () => {
    const change = { ...badJoined, ...cable('5G | 5k | 5G', '5G | 5k | 5G', '2M'), ...of('Cable', '5k') };
    expect(linesOf(change, second)).toEqual(convicted('cable'));
    expect(assess(change)).toMatchObject({ verdict: 'no-go', parts: { cable: 'undecided' } });
    expect(steps(change)).toEqual(['check-ends-free', 'complete-cable', 'test-motor-alone']);
  });

  it('convicts no motor whose pins may be mistaken', () => {
    const change = { ...goodCable, ...motor('0.1 Ω | 5G | 5G', '5G'), ...of('Motor', '0.1 Ω') };
    expect(assess(change)).toMatchObject({ verdict: 'undecided', parts: { motor: 'undecided' } });
    expect(steps(change)).not.toContain('replace-motor');
  });

  it('that is bad of a hook-up in doubt without anything bad makes the cable suspect', () => {
    const change = { ...badJoined, ...cable('5G | OL | 5G', '5G | 5G | 5G'), ...of('Cable', '2M') };
    expect(assess(change)).toMatchObject({ verdict: 'no-go', parts: { cable: 'suspect' } });
  });

  it('that is good clears an undecided row only if the row is complete', () => {
    const row = cable('5G | OL | 5G', '5G | 5G | 5G');
    const clears = (change: Change) => assess({ ...badJoined, ...goodMotor, ...change, ...of('Cable', '5G') }).verdict;
    expect(clears(row)).toBe('undecided');
    expect(clears({ ...row, ...cable('5G | OL | 5G', '5G | 5G | 5G', '') })).toBe('no-go');
    expect(clears(cable('5G | OL | 5G', undefined))).toBe('no-go');
    expect(clears(cable('5G | | 5G', '5G | 5G | 5G'))).toBe('no-go');
    expect(clears(cable('5G | 5G | 5G', '5G | 5G | 5G', '2M'))).toBe('no-go');
    expect(assess({ ...badJoined, ...goodMotor, ...row, ...of('Cable', 'OL') }).verdict).toBe('no-go');
  });
});
