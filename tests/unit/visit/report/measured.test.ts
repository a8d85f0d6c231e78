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

  test('has a row for each reading, with its unit as it was judged, limit, verdict and time', () => {
    expect(bridge?.rows.slice(0, 2)).toEqual([
      {
        id: 'busVoltage',
        terminals: 'DC-bus voltage',
        reading: '0.03 V',
        limit: expect.stringMatching(/^100.mV \[a\]$/),
        verdict: 'Passes',
        time: '06:12',
      },
      {
        id: 'plusU',
        terminals: 'DC+ to U',
        reading: '482 kΩ',
        limit: expect.stringMatching(/^10.% \[b\]$/),
        verdict: 'Passes',
        time: '06:28',
      },
    ]);
    expect(bridge?.rows).toHaveLength(7);
    expect(insulation?.rows.map(({ terminals, verdict }) => [terminals, verdict])).toEqual([
      ['U to PE', 'Fails'],
      ['V to PE', 'Fails'],
      ['W to PE', 'Fails'],
      ['PE pin to frame', 'Passes'],
    ]);
  });

  test('has beside them what was noted, with units, and no choice with its initial value', () => {
    expect(bridge?.circumstances).toContainEqual({ name: 'Motor leads at the drive', text: 'Taken off U, V and W' });
    expect(insulation?.circumstances).toContainEqual({ name: 'Test voltage', text: '500 V' });
    const names = insulation?.circumstances.map(({ name }) => name);
    expect(names).not.toContain('Why do you measure?');
    expect(names).not.toContain('Accuracy, counts');
  });

  test('says what was found in the words of the calculator', () => {
    expect(isolation).toMatchObject({ fails: true, headline: expect.stringContaining('motor proven bad') });
    expect(bridge).toMatchObject({ fails: false, verdict: 'Go' });
  });

  test('has its instrument', () => {
    expect(bridge?.instrument).toBe('Multimeter, M-07, calibrated until 2026-09, 1.2 % + 4 counts');
    expect(isolation?.instrument).toMatch(/^Insulation tester, T-02/);
    const unnoted = visitOf(motorAndCable, { instruments: [] });
    expect(measuredReports(evaluated(unnoted), ['bridge'])[0]?.instrument).toBe('not noted');
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
