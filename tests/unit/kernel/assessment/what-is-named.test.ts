import { describe, expect, it } from 'vitest';
import { judgeDischarge } from '../../../../src/kernel/assessment/bus-discharge.ts';
import { impossibleFigures } from '../../../../src/kernel/assessment/possible-figures.ts';
import { judgePe, peMarks, peRemarks } from '../../../../src/kernel/assessment/protective-conductor.ts';
import { reminderCodes, testReminders } from '../../../../src/kernel/assessment/test-reminders.ts';
import { judgeSuitability, judgeTestVoltage, testVoltageRow } from '../../../../src/kernel/assessment/test-voltage.ts';
import { missing, ohms, volts } from '../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../support/typed.ts';

describe('the bus', () => {
  it('that was not measured names its limit', () => {
    expect(judgeDischarge(missing)).toEqual({
      code: 'bus-not-measured',
      severity: 'undecided',
      readings: ['busVoltage'],
      limits: ['touch-voltage'],
    });
  });

  it('counts by its size, whatever the sign of the leads', () => {
    expect(judgeDischarge(volts(-0.05)).code).toBe('bus-discharged');
    expect(judgeDischarge(volts(-5))).toMatchObject({ code: 'bus-residual-voltage', volts: 5 });
    expect(judgeDischarge(volts(-565))).toMatchObject({ code: 'bus-not-discharged', volts: 565 });
  });

  it('in over-range has no figure', () => {
    expect(judgeDischarge(typed('OL', 'voltage'))).not.toHaveProperty('volts');
    expect(judgeDischarge(typed('<0.1 V', 'voltage')).code).toBe('bus-discharged');
  });
});

describe('the reminders beside an insulation test', () => {
  it('are never the drive, and four times as long a discharge', () => {
    expect(testReminders(10)).toEqual([
      { code: 'never-on-drive', severity: 'note', readings: [], limits: [] },
      {
        code: 'discharge-after-test',
        severity: 'note',
        readings: [],
        limits: ['discharge-after-test'],
        minutes: 40,
        times: 4,
      },
    ]);
    expect(testReminders()[1]).toMatchObject({ minutes: 4 });
    expect(reminderCodes).toEqual(testReminders().map(({ code }) => code));
  });
});

describe('the test voltage', () => {
  it('that lacks or is too low is named', () => {
    expect(judgeTestVoltage(missing)).toEqual([
      { code: 'test-voltage-missing', severity: 'undecided', readings: ['testVoltage'], limits: [] },
    ]);
    expect(judgeTestVoltage(volts(249))).toEqual([
      {
        code: 'test-voltage-too-low',
        severity: 'undecided',
        readings: ['testVoltage'],
        limits: ['test-voltage-lowest'],
        setVolts: 249,
        lowestVolts: 250,
      },
    ]);
    expect(judgeTestVoltage(volts(250))).toEqual([]);
  });

  it('beside a rated voltage that lacks names that', () => {
    expect(judgeSuitability(volts(500), missing)).toEqual([
      { code: 'rated-voltage-missing', severity: 'undecided', readings: ['ratedVoltage'], limits: [] },
    ]);
  });

  it('that does not suit names both, the row and its range', () => {
    expect(judgeSuitability(volts(1001), volts(400))).toEqual([
      {
        code: 'test-voltage-unsuited',
        severity: 'caution',
        readings: ['testVoltage', 'ratedVoltage'],
        limits: ['test-voltage-below-1000'],
        setVolts: 1001,
        ratedVolts: 400,
        fromVolts: 500,
        toVolts: 500,
      },
    ]);
  });

  it.each([
    [999, 'test-voltage-below-1000'],
    [1000, 'test-voltage-1000-2500'],
    [2500, 'test-voltage-1000-2500'],
    [2501, 'test-voltage-2501-5000'],
    [5000, 'test-voltage-2501-5000'],
    [5001, 'test-voltage-5001-12000'],
    [12000, 'test-voltage-5001-12000'],
    [12001, 'test-voltage-above-12000'],
  ])('of a machine of %d V is in the row %s', (rated, row) => {
    expect(testVoltageRow(rated)).toBe(row);
  });
});

describe('the protective conductor', () => {
  const long = { metres: 85, squareMillimetres: 1.5 };

  it('needs both length and cross-section to be expected', () => {
    expect(peMarks({ metres: 85 }).expected).toBeUndefined();
    expect(peMarks({ squareMillimetres: 1.5 }).expected).toBeUndefined();
    expect(peMarks(long).expected).toBeGreaterThan(1);
  });

  it('of a zero is judged by the step of its display', () => {
    expect(judgePe(ohms(0, 0.1))).toBe('short');
    expect(judgePe(ohms(0, 1e4))).toBe('not-proven');
    // A figure above zero is judged as read, however coarse the display.
    expect(judgePe(ohms(0.5, 1e4))).toBe('short');
  });

  it('named by a multimeter says with which current it would be proven', () => {
    expect(peRemarks(ohms(0.2))).toEqual([
      { code: 'pe-by-multimeter', severity: 'note', readings: ['PE'], limits: ['continuity-current'] },
    ]);
  });

  it('is not remarked on if it is broken and the frame is earthed otherwise, which is not asked twice', () => {
    expect(peRemarks(typed('OL'))).toEqual([]);
    expect(peRemarks(missing, {}, 'only-pe')).toEqual([]);
    expect(peRemarks(typed('OL'), {}, 'only-pe')[0]?.code).toBe('pe-frame-only-by-pe');
  });

  it('above what is expected says what was, if anything', () => {
    expect(peRemarks(ohms(2))[0]).toEqual({
      code: 'pe-above-expected',
      severity: 'note',
      readings: ['PE'],
      limits: ['pe-dead-short', 'pe-broken-unknown-length'],
      shortOhms: 1,
    });
    expect(peRemarks(ohms(2))[0]).not.toHaveProperty('expectedOhms');
    expect(peRemarks(ohms(1.9), long)[0]).toHaveProperty('expectedOhms', peMarks(long).expected);
  });

  it('below half of what is expected went another way, and at half it did not', () => {
    const half = (peMarks(long).expected ?? Number.NaN) / 2;
    const codes = (value: number) => peRemarks(ohms(value, 0), { ...long, amperes: 0.2 }).map(({ code }) => code);
    expect(codes(half)).toEqual([]);
    expect(codes(half - 0.001)).toEqual(['pe-lower-than-expected']);
  });

  it('in under-range has no figure that could be too low', () => {
    for (const text of ['<1 Ω', '<0.3 Ω']) expect(peRemarks(typed(text), { ...long, amperes: 0.2 })).toEqual([]);
  });
});

describe('figures that can’t be', () => {
  const paths = (input: object, signed?: string[]) =>
    impossibleFigures(input, signed).flatMap(({ readings }) => readings);

  it('are percentages beyond a hundred, and only percentages', () => {
    expect(paths({ instrument: { percent: 101, counts: 101 }, tolerancePercent: -1 })).toEqual([
      'instrument.percent',
      'tolerancePercent',
    ]);
    expect(paths({ tolerancePercent: 0, instrument: { percent: 100 }, metres: 5000 })).toEqual([]);
    expect(paths({ humidity: { kind: 'value', value: 101, unit: '%' } })).toEqual(['humidity']);
  });

  it('are not nothing', () => {
    expect(paths({ one: null, other: undefined, text: 'off', none: missing })).toEqual([]);
  });

  it('are voltages below zero unless their sign is that of the leads', () => {
    expect(paths({ testVoltage: volts(-1), busVoltage: volts(-1) }, ['busVoltage'])).toEqual(['testVoltage']);
    expect(paths({ testVoltage: volts(-1) })).toEqual(['testVoltage']);
  });
});
