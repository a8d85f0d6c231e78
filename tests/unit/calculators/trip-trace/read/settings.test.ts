import { describe, expect, it } from 'vitest';
import { proposedColumns, statedUnits } from '../../../../../src/calculators/trip-trace/read/columns.ts';
import { settingsProblems } from '../../../../../src/calculators/trip-trace/read/file-problems.ts';
import { makeTrace } from '../../../../../src/calculators/trip-trace/read/make-trace.ts';
import type { Typed } from '../../../../../src/kernel/form/field.ts';
import { readText, rows } from './read-text.ts';

// No source: what heads of recorders say, and what a person answers beside it. The rows have one sample each 0.125.

function made(head: string, answers: Typed = {}, body = rows()) {
  const read = readText(`${head}\n${body}`);
  if (!read.ok) throw new Error(read.problem);
  const columns = proposedColumns(read.table);
  const result = makeTrace('trip.csv', read.table, { ...columns, ...statedUnits(read.table, columns), ...answers });
  return { ...result, columns };
}

const stepOf = (head: string, answers?: Typed, body?: string) => {
  const result = made(head, answers, body);
  return result.ok ? result.trace.step : result.problems;
};
const firstOf = (head: string, answers?: Typed) => {
  const result = made(head, answers);
  return result.ok ? result.trace.currents[0][0] : result.problems;
};

const byIndex = rows()
  .split('\n')
  .map((row, i) => row.replace(/^[^;]*/, String(i)))
  .join('\n');

describe('the time', () => {
  it.each([
    ['Time [s]', 0.125],
    ['t/ms', 0.125e-3],
    ['Zeit (µs)', 0.125e-6],
    ['Time, us', 0.125e-6],
  ])('%s', (name, step) => expect(stepOf(`${name};iU [A];iV [A];iW [A]`)).toBeCloseTo(step, 12));

  it('without a unit is asked for', () => {
    expect(stepOf('Time;iU [A];iV [A];iW [A]')).toEqual({ timeUnit: 'unit-missing' });
    expect(stepOf('Time;iU [A];iV [A];iW [A]', { timeUnit: 'ms' })).toBeCloseTo(0.125e-3, 12);
  });

  it('in samples needs the time of one', () => {
    const head = 'Sample;iU [A];iV [A];iW [A]';
    expect(stepOf(head, { timeUnit: 'samples' }, byIndex)).toEqual({ sampleTime: 'sample-time-missing' });
    expect(stepOf(head, { timeUnit: 'samples', sampleTime: '62.5 µs' }, byIndex)).toBeCloseTo(62.5e-6, 12);
    expect(stepOf(head, { timeUnit: 'samples', sampleTime: 'fast' }, byIndex)).toEqual({ sampleTime: 'not-a-figure' });
  });

  it('that does not rise, or stands still, is refused beside its field', () => {
    const head = 'Time [ms];iU [A];iV [A];iW [A]';
    const back = rows()
      .split('\n')
      .map((row, i) => row.replace(/^[^;]*/, String(40 - i)))
      .join('\n');
    expect(stepOf(head, {}, back)).toEqual({ colTime: 'time-not-rising' });
    const coarse = rows()
      .split('\n')
      .map((row, i) => row.replace(/^[^;]*/, String(Math.floor(i / 8))))
      .join('\n');
    expect(stepOf(head, {}, coarse)).toEqual({ colTime: 'time-too-coarse' });
  });
});

describe('the currents', () => {
  it.each([
    ['iU [A];iV [A];iW [A]', {}, 8],
    ['iU [mA];iV [mA];iW [mA]', {}, 0.008],
    ['iU [Arms];iV [Arms];iW [Arms]', {}, 8 * Math.SQRT2],
    ['iU [%];iV [%];iW [%]', { currentScale: '50 A' }, 4],
    ['iU;iV;iW', { currentUnit: 'raw', currentScale: '0,25' }, 2],
  ])('%s %j', (names, answers, first) => expect(firstOf(`Time [ms];${names}`, answers)).toBeCloseTo(first, 9));

  it('in per cent of nothing known are judged in per cent', () => {
    expect(made('Time [ms];iU [%];iV [%];iW [%]')).toMatchObject({ ok: true, trace: { inAmperes: false } });
  });

  it.each([
    [{ currentUnit: '' }, { currentUnit: 'unit-missing' }],
    [{ currentUnit: 'percent', currentScale: 'much' }, { currentScale: 'not-a-figure' }],
    [{ colV: '2' }, { colV: 'column-taken' }],
    [{ colV: '' }, { colV: 'column-missing' }],
    [{ tripTime: 'late' }, { tripTime: 'not-a-figure' }],
    [{ tripTime: '900' }, { tripTime: 'outside-the-file' }],
  ])('%j is %j', (answers, problems) => {
    const result = made('Time [ms];iU [A];iV [A];iW [A]', answers as unknown as Typed);
    expect(result.ok ? {} : result.problems).toEqual(problems);
  });
});

it('finds the columns in any order', () => {
  const turned = rows()
    .split('\n')
    .map((row) => row.split(';').reverse().join(';'))
    .join('\n');
  const [plain, other] = [made('Time [ms];iU [A];iV [A];iW [A]'), made('iW [A];iV [A];iU [A];Time [ms]', {}, turned)];
  expect(other.columns).toMatchObject({ colTime: '4', colU: '3', colV: '2', colW: '1' });
  expect(other.ok && other.trace).toEqual(plain.ok && plain.trace);
});

it('says of every problem what to do', () => {
  for (const words of Object.values(settingsProblems)) expect(words).toMatch(/^[A-Z].{30,}\.$/);
});
