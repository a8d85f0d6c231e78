import type { ReadForm } from '../../kernel/form/read-form.ts';
import type { TracePlot } from './plot-series.ts';
import type { TraceRemarks } from './read/make-trace.ts';
import type { TraceFigures } from './rule/figures.ts';

/** What is kept of a file: figures and curves, not the samples. */
export interface KeptTrace {
  figures: TraceFigures;
  plot: TracePlot;
  remarks: TraceRemarks;
}

/** Figures are kept with this many digits: more than a recorder has. */
const digits = 6;

/** As the text of a field, so that it is kept, shared and judged like every other entry. */
export function writeKeptTrace(kept: KeptTrace): string {
  return JSON.stringify(kept, (_, value: unknown) =>
    typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(digits)) : value,
  );
}

type Shape = 'number' | 'boolean' | 'string' | readonly Shape[] | { readonly [name: string]: Shape };

/** A name that ends with `?` may be absent. A list holds any number of one shape. */
const shape: Shape = {
  figures: {
    file: 'string',
    ...{ rows: 'number', sampleSeconds: 'number', spanSeconds: 'number', tripSeconds: 'number', tripFrom: 'string' },
    ...{
      samplesAfter: 'number',
      inAmperes: 'boolean',
      busInVolts: 'boolean',
      speedInRpm: 'boolean',
      measured: 'number',
    },
    ...{ noise: 'number', gapAtTrip: 'boolean', 'clippedAt?': 'number', 'polePairs?': 'number' },
    peaks: { atTrip: 'number', before: 'number', beforeSeconds: 'number' },
    slope: {
      ...{ rise: 'number', changes: ['number'] as const, riseBefore: 'number' },
      ...{ risingSamples: 'number', risingMost: 'number', risingLast: 'number' },
      vector: { rise: 'number', changes: ['number'] as const, riseBefore: 'number' },
    },
    'sum?': {
      ...{ zero: 'boolean', noise: 'number', offset: 'number', atTrip: 'number', before: 'number' },
      alone: 'number',
      'follows?': { phase: 'number', share: 'number', fit: 'number', amps: 'number' },
    },
    'zero?': { phase: 'number', seconds: 'number', upToTrip: 'boolean', others: 'number', 'turns?': 'number' },
    'rotation?': {
      ...{ windows: 'number', pairsBefore: 'number', spread: 'number' },
      ...{ lastHertz: 'number', lastRpm: 'number', lastSeconds: 'number' },
    },
    'speedJump?': { share: 'number', before: 'number' },
    'oscillation?': {
      ...{ of: 'string', hertz: 'number', cycles: 'number', share: 'number', growth: 'number' },
      ...{ irregularity: 'number', 'electricalHertz?': 'number' },
    },
    'motion?': {
      ...{ speedBefore: 'number', speedAtTrip: 'number', speedRecent: 'number', risingSeconds: 'number' },
      ...{ 'driving?': 'boolean', lostWhileDriving: 'number', 'gainedAgainst?': 'number', stalledSeconds: 'number' },
      ...{ 'loadGrowth?': 'number', 'loadCurrent?': 'number' },
    },
    'bus?': {
      ...{ before: 'number', atTrip: 'number', least: 'number', most: 'number' },
      ...{ moved: 'number', leastEarlier: 'number', rising: 'boolean' },
      ...{ 'currentBeforeFall?': 'number', 'slowing?': 'boolean' },
    },
  },
  plot: {
    near: { from: 'number', to: 'number', top: 'number', currents: [['number']] },
    whole: {
      from: 'number',
      to: 'number',
      top: 'number',
      current: ['number'],
      'speed?': ['number'],
      'bus?': ['number'],
    },
  },
  remarks: { rowsWithoutCurrent: 'number', 'timeGoesBackAt?': 'number' },
};

/** Reads such a text. Undefined if anything about it is foreign: a link or a store may hold what nobody measured. */
export function readKeptTrace(text: string): KeptTrace | undefined {
  if (text === '') return undefined;
  try {
    const value: unknown = JSON.parse(text);
    return hasShape(value, shape) && isPossible(value as KeptTrace) ? (value as KeptTrace) : undefined;
  } catch {
    return undefined;
  }
}

function hasShape(value: unknown, wanted: Shape): boolean {
  if (typeof wanted === 'string') return typeof value === wanted && (wanted !== 'number' || Number.isFinite(value));
  if (Array.isArray(wanted)) return Array.isArray(value) && value.every((one) => hasShape(one, wanted[0] as Shape));
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  const has = value as Record<string, unknown>;
  const parts = Object.entries(wanted).map(([name, part]): [string, boolean, Shape] => {
    const mayLack = name.endsWith('?');
    return [mayLack ? name.slice(0, -1) : name, mayLack, part];
  });
  const names = parts.map(([name]) => name);
  return (
    Object.keys(has).every((name) => names.includes(name)) &&
    parts.every(([name, mayLack, part]) => (has[name] === undefined ? mayLack : hasShape(has[name], part)))
  );
}

const ways = ['typed', 'time-zero', 'currents-end', 'file-end'];
const signals = ['torque-current', 'torque', 'current', 'speed'];
const phases = [0, 1, 2];

function isPossible({ figures, plot }: KeptTrace): boolean {
  const { measured, sampleSeconds, tripFrom, noise, slope, peaks, zero, sum, oscillation } = figures;
  return (
    [2, 3].includes(measured) &&
    sampleSeconds > 0 &&
    noise >= 0 &&
    peaks.atTrip >= 0 &&
    ways.includes(tripFrom) &&
    [slope, slope.vector].every(({ changes }) => changes.length === 3) &&
    plot.near.currents.length === 3 &&
    (zero === undefined || phases.includes(zero.phase)) &&
    (sum?.follows === undefined || phases.includes(sum.follows.phase)) &&
    (oscillation === undefined || signals.includes(oscillation.of))
  );
}

/** What is kept of the file, for the drawing. */
export const keptTraceOf = ({ texts }: ReadForm): KeptTrace | undefined => readKeptTrace(texts.trace ?? '');

/** The field in a list of entries. */
export function shownReading(text: string): string {
  const kept = readKeptTrace(text);
  return kept === undefined ? 'not readable' : `${kept.figures.file}, ${kept.figures.rows} rows`;
}
