import fc from 'fast-check';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import {
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
  type ValueReading,
} from '../../src/kernel/reading/reading.ts';

/** A resistance in ohms as shown by a display of `digits` digits: the value rounded, with its step. */
export function shown(resistance: number, digits = 3): ValueReading {
  if (resistance === 0) return ohms(0, 0.1);
  const place = Math.floor(Math.log10(resistance)) - digits + 1;
  return ohms(Number(`${Math.round(resistance / 10 ** place)}e${place}`), Number(`1e${place}`));
}

/** Resistances with an evenly distributed order of magnitude between two ends, in ohms. */
export function logUniform(from: number, to: number): fc.Arbitrary<number> {
  return fc.double({ min: Math.log10(from), max: Math.log10(to), noNaN: true }).map((exponent) => 10 ** exponent);
}

/** Resistances around a limit: at it, slightly and far below and above. */
export function near(limit: number): fc.Arbitrary<number> {
  const factors = [1e-3, 0.1, 0.25, 0.5, 0.8, 0.9, 0.95, 0.99, 1, 1.01, 1.05, 1.1, 1.25, 1.5, 2, 4, 10, 100];
  return fc.constantFrom(...factors).map((factor) => limit * factor);
}

/** Mostly values, sometimes over-range or under-range with or without its bound, or missing. */
export function readingOf(resistance: fc.Arbitrary<number>): fc.Arbitrary<Reading> {
  return fc.oneof(
    { weight: 12, arbitrary: resistance.map((one) => shown(one)) },
    { weight: 3, arbitrary: resistance.map((one) => overOhms(shown(one).value)) },
    { weight: 1, arbitrary: fc.constantFrom<Reading>(overOhms(), underOhms(), missing) },
    { weight: 1, arbitrary: resistance.map((one) => underOhms(shown(one).value)) },
  );
}

/** `upperLimits` in ohms; each statement may be left out. */
export function instrument(upperLimits: number[]): fc.Arbitrary<Instrument> {
  return fc.record(
    {
      percent: fc.constantFrom(0, 0.5, 1, 2, 5, 10, 30),
      counts: fc.constantFrom(0, 1, 2, 5),
      upperLimit: fc.constantFrom(...upperLimits),
    },
    { requiredKeys: [] },
  );
}

/** The same instrument with weaker specifications: wider limits of error, or a lower upper limit. */
export function weakerInstrument(upperLimits: number[]): fc.Arbitrary<(instrument: Instrument) => Instrument> {
  const extra = fc.constantFrom(0, 0.5, 1, 5, 20, 100);
  return fc
    .record({ percent: extra, counts: fc.constantFrom(0, 1, 5, 50), limit: fc.constantFrom(...upperLimits) })
    .map(({ percent, counts, limit }) => (stated) => ({
      percent: Math.min(100, (stated.percent ?? 0) + percent),
      counts: (stated.counts ?? 0) + counts,
      // Only lowers a stated limit: a new one would add knowledge, since it bounds an over-range noted without its
      // range.
      ...(stated.upperLimit === undefined ? {} : { upperLimit: Math.min(stated.upperLimit, limit) }),
    }));
}

/** The reading with its resistance or bound divided by `factor`: on the display's steps, never higher than before. */
export function lower(reading: Reading, factor: number): Reading {
  return changed(reading, (value, step) => Math.floor(value / factor / step) * step);
}

/** The reading with its resistance or bound multiplied by `factor`. */
export function higher(reading: Reading, factor: number): Reading {
  return changed(reading, (value, step) => Math.ceil((value * factor) / step) * step);
}

function changed(reading: Reading, change: (value: number, step: number) => number): Reading {
  switch (reading.kind) {
    case 'missing':
      return reading;
    case 'value':
      return { ...reading, value: change(reading.value, reading.resolution ?? 1e-9) };
    case 'over':
      return reading.atLeast === undefined ? reading : overOhms(change(reading.atLeast, 1e-9));
    case 'under':
      return reading.atMost === undefined ? reading : underOhms(change(reading.atMost, 1e-9));
  }
}
