import { describe, expect, it } from 'vitest';
import { measureTrace } from '../../../../../src/calculators/trip-trace/measure/measure-trace.ts';
import { sampleTimeFor } from '../../../../../src/calculators/trip-trace/rule/allowed-rise.ts';
import { assessTripTrace } from '../../../../../src/calculators/trip-trace/rule/assess.ts';
import type { TripTraceInput, TripTraceStep } from '../../../../../src/calculators/trip-trace/rule/input.ts';
import * as why from '../../../../../src/calculators/trip-trace/why-words.ts';
import { tripTraceSteps } from '../../../../../src/calculators/trip-trace/words.ts';
import { sentenceOf } from '../../../../../src/kernel/words/sentences.ts';
import { type Computed, computedTrace, turning } from '../figures.ts';

// Worked by hand, no source: what a recording lacks follows from which rules were silent, and why.

const drive: Partial<TripTraceInput> = {
  inductance: 0.012,
  busVolts: 560,
  tripAmps: 30,
  stored: 'raw',
  sensors: 'three',
};

function steps(computed: Computed, data: Partial<TripTraceInput> = drive): TripTraceStep[] {
  const figures = measureTrace(computedTrace(computed));
  const pairs = computed.polePairs === undefined ? {} : { polePairs: computed.polePairs };
  return assessTripTrace({ ...data, ...pairs, figures }).next;
}

const recordSo = (all: TripTraceStep[]) => all.find((one) => one.code === 'record-so');
const full: Computed = {
  ...{ speed: () => 1500, bus: () => 560, torque: () => 5, polePairs: 4, seconds: 0.6, tripAt: 0.59 },
  currents: turning(20, 100),
};

describe('the next recording', () => {
  it('needs nothing more of a complete file', () => {
    expect(recordSo(steps(full))).toBeUndefined();
  });

  it.each([
    ['bus', 'bus'],
    ['torque', 'torque'],
  ] as const)('needs the %s', (column, wanted) => {
    const { [column]: _, ...rest } = full;
    expect(recordSo(steps(rest))).toEqual({ code: 'record-so', columns: [wanted] });
  });

  it('needs the speed, and says nothing of a torque command that is there', () => {
    const { speed: _, ...rest } = full;
    expect(recordSo(steps(rest))).toMatchObject({ columns: expect.arrayContaining(['speed']) });
  });

  it('needs the third current unless the drive has no sensor for it', () => {
    const two: Computed = { ...full, measured: 2 };
    expect(recordSo(steps(two))).toMatchObject({ columns: ['third-current'] });
    expect(recordSo(steps(two, { ...drive, sensors: 'two' }))).toBeUndefined();
  });

  it('needs what follows the trip if the file ends before anything shows it', () => {
    const figures = measureTrace({ ...computedTrace({ ...full, currents: turning(5, 100) }), tripFrom: 'file-end' });
    const { next } = assessTripTrace({ ...drive, polePairs: 4, figures });
    expect(recordSo(next)).toMatchObject({ columns: ['after-trip'] });
  });

  it('needs a sample every 90 µs, if a short circuit is to stand out of one each millisecond', () => {
    // At rest 560/(0.75 · 0.012 · 0.4) = 155.6 A in 1 ms; 15 A, half of the trip level, in 96 µs.
    const slow: Computed = {
      ...{ step: 0.001, speed: () => 0, bus: () => 560, torque: () => 5, polePairs: 4, tripAt: 0.301, seconds: 0.31 },
      currents: (t) => (t > 0.3 ? [30, -28, -2] : [4, -2, -2]),
    };
    const wanted = recordSo(steps(slow));
    expect(wanted).toMatchObject({ seconds: expect.closeTo(96.4e-6, 6) });
    if (wanted === undefined) throw new Error('nothing is wanted');
    expect(sentenceOf(tripTraceSteps, wanted)).toContain('a sample every 90 µs or faster');
  });
});

it('a sampling that does not help is none', () => {
  expect(sampleTimeFor(10, 40, 1e-3)).toBeCloseTo(250e-6, 9);
  expect(sampleTimeFor(50, 40, 1e-3)).toBeUndefined();
  expect(sampleTimeFor(-1, 40, 1e-3)).toBeUndefined();
  expect(sampleTimeFor(1, Number.POSITIVE_INFINITY, 1e-3)).toBeUndefined();
});

describe('what is missing is asked for', () => {
  const asked = (lacking: keyof TripTraceInput, computed: Computed = full) =>
    steps(
      computed,
      Object.fromEntries(Object.entries(drive).filter(([name]) => name !== lacking)) as Partial<TripTraceInput>,
    ).map(({ code }) => code);

  it.each([
    ['inductance', 'state-inductance'],
    ['tripAmps', 'state-level'],
    ['stored', 'state-storing'],
  ] as const)('%s: %s', (lacking, code) => {
    expect(asked(lacking, { ...full, currents: turning(5, 100) })).toContain(code);
    expect(steps({ ...full, currents: turning(5, 100) }).map((one) => one.code)).not.toContain(code);
  });

  it('pole pairs', () => {
    const { polePairs: _, ...rest } = full;
    expect(steps(rest).map(({ code }) => code)).toContain('state-pairs');
  });
});

it('each reason that is not the trip itself names what would tell', () => {
  // These are observations: nothing is lacking that a recording could bring.
  const observed = [
    ...['high', 'coarse', 'pairs-do-not-fit', 'no-pairs', 'none-found', 'irregular', 'small', 'moves', 'ordinary'],
    ...['no-loss', 'too-fast', 'current-first', 'between'],
  ];
  const all = Object.values(why).flatMap((silences) => Object.entries<string>(silences));
  const names = /tell|state its|State |state the|Take |Record |manual|column|show/;
  expect(all.filter(([reason, text]) => !observed.includes(reason) && !names.test(text))).toEqual([]);
});
