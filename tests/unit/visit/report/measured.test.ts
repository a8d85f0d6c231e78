import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { measuredReports } from '../../../../src/visit/report/measured.ts';
import { joinedParts } from '../../../../src/visit/report/next-drive.ts';
import {
  badInsulation,
  bothBad,
  driveOnly,
  type Entry,
  motorAndCable,
  visitOf,
} from '../../../support/marrow-bay-visits.ts';

const evaluated = (visit: ReturnType<typeof visitOf>) => evaluate(visit, visit.changedAt);

const proof = (entries: readonly Entry[]) =>
  joinedParts(evaluated(visitOf(entries)).answers).map(({ part, tested }) => [part, tested]);

describe('what the next drive will be joined to', () => {
  const insulation = (form: Entry[1]): Entry => ['insulation', form];
  test.each<[string, Entry[], boolean, boolean]>([
    ['nothing measured', [], false, false],
    ['joined and good', driveOnly, true, true],
    ['joined and bad, not separated', [insulation(badInsulation)], false, false],
    ['both bad alone', motorAndCable, true, true],
    [
      'the cable alone only',
      [insulation(badInsulation), ['isolation', { ...bothBad, motorU: '', motorV: '', motorW: '', motorPE: '' }]],
      false,
      true,
    ],
    [
      'joined and good, but the symptom points at the cable and nothing was separated',
      [
        ['symptom', { when: 'position-or-cable', gravityLoaded: 'no' }],
        ...driveOnly.filter(([id]) => id === 'insulation'),
      ],
      false,
      false,
    ],
  ])('%s', (_name, entries, motor, cable) => {
    expect(proof(entries)).toEqual([
      ['Motor', motor],
      ['Motor cable', cable],
    ]);
  });

  test('a bad part is called bad, and a missing proof missing', () => {
    const texts = (entries: readonly Entry[]) =>
      joinedParts(evaluated(visitOf(entries)).answers).map(({ text }) => text);
    expect(texts(motorAndCable)[0]).toContain('tested alone, and bad');
    expect(texts([])[1]).toContain('PROOF IS MISSING');
  });
});

describe('a measurement in the report', () => {
  const [bridge, insulation, isolation] = measuredReports(evaluated(visitOf(motorAndCable)), [
    'bridge',
    'insulation',
    'isolation',
  ]);

  test('has its readings exactly as typed, and no choice with its initial value', () => {
    expect(bridge?.readings.slice(0, 4)).toEqual(
      expect.arrayContaining([
        { name: 'DC-bus voltage', value: '0.03 V (2026-03-03, 06:12)', isReading: true },
        { name: 'Motor leads at the drive', value: 'Taken off U, V and W', isReading: false },
        { name: 'DC+ to U', value: '482k', isReading: true },
      ]),
    );
    expect(insulation?.readings.map(({ name }) => name)).not.toContain('Why do you measure?');
  });

  test('has its time and instrument', () => {
    expect(bridge).toMatchObject({
      time: '06:12 to 06:28',
      instrument: 'Multimeter, M-07, calibrated until 2026-09, 1.2 % + 4 counts',
    });
    expect(isolation?.instrument).toMatch(/^Insulation tester, T-02/);
    const unnoted = visitOf(motorAndCable, { instruments: [] });
    expect(measuredReports(evaluated(unnoted), ['bridge'])[0]?.instrument).toBe('instrument not noted');
  });

  test('has each limit with its value, status and source', () => {
    expect(bridge?.limits.find(({ id }) => id === 'bridge-tolerance')).toMatchObject({
      value: '10\u00a0%',
      status: 'common-practice',
      source: '',
    });
    expect(insulation?.limits.find(({ id }) => id === 'halving-rule')?.source).toMatch(/^IEEE 43/);
  });

  test('is left out if no reading can be judged', () => {
    const unreadable = visitOf([['bridge', { busVoltage: 'what' }]]);
    expect(measuredReports(evaluated(unreadable), ['bridge', 'winding', 'symptom'])).toEqual([]);
  });
});
