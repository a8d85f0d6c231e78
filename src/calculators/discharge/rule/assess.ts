import { type Assessment, findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import { judgeEnergy } from './energy.ts';
import type { DischargeFinding, DischargeInput, DischargePayloads, DischargeStepCode } from './input.ts';
import {
  capacitanceOf,
  hull,
  type KnownTimeConstant,
  measuredTimeConstant,
  shownVolts,
  statedTimeConstant,
} from './time-constant.ts';
import { type Charged, span, type Wait, waits } from './wait.ts';

const finding = findingMaker<DischargePayloads>();

export interface DischargeAssessment extends Assessment<DischargeFinding, Step<DischargeStepCode>> {
  /** What the numbers below rest on; absent if the time constant is unknown. */
  charged?: Charged;
  waits: Wait[];
}

/**
 * The shortest and the longest time in which the DC bus falls to the published limits. There is no go: a computed time
 * never replaces the measurement. A no-go means that the readings prove a discharge that is too slow. If values and
 * readings both give a time constant, the longest time counts. An impossible figure (not finite, or negative where it
 * can't be) gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessDischarge(input: DischargeInput): DischargeAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return result(impossible, []);
  const stated = statedTimeConstant(input);
  const measured = measuredTimeConstant(input);
  const start = startOf(input);
  const known = [stated.timeConstant, measured.timeConstant].filter((interval) => interval !== undefined);
  const findings: DischargeFinding[] = [
    finding('only-the-meter', 'undecided', { limits: ['touch-voltage'] }),
    ...measured.findings,
    ...stated.findings,
    ...nearHalf(input, measured),
  ];
  const capacitance = capacitanceOf(input);
  if (start === undefined) findings.push(finding('start-missing', 'undecided'));
  else if (capacitance !== undefined) findings.push(judgeEnergy(capacitance.hi, start.hi));
  const rises = findings.some(({ severity }) => severity === 'stop');
  if (known.length === 0 && !rises) findings.push(finding('discharge-data-missing', 'undecided'));
  if (rises || start === undefined || known.length === 0) return result(findings, []);
  const nowAtMost = measured.timeConstant && shownVolts(input.second, input.instrument).hi;
  const fromReading = startsAtReading(input);
  const charged: Charged = { start, fromReading, timeConstant: hull(known), capacitance, nowAtMost };
  const rows = waits(charged);
  findings.push(
    ...longest(rows, fromReading),
    ...disagreements(stated, measured),
    ...againstLabel(input, start, stated, measured),
  );
  return { ...result(findings, rows), charged };
}

function result(findings: DischargeFinding[], rows: Wait[]): DischargeAssessment {
  return { verdict: verdictOf(findings), findings, next: steps(findings), waits: rows };
}

/**
 * The bus started with at least the first reading, so a lower stated start is not used. Over-range has no upper end to
 * calculate from.
 */
function startOf({ startVoltage, first, instrument }: DischargeInput): Interval | undefined {
  const known = [startVoltage, first].filter(({ kind }) => kind !== 'missing').map((r) => shownVolts(r, instrument));
  if (known.length === 0 || known.some(({ hi }) => !Number.isFinite(hi))) return undefined;
  return { lo: Math.max(...known.map(({ lo }) => lo)), hi: Math.max(...known.map(({ hi }) => hi)) };
}

/**
 * The bus does not fall any more, between the shares that two capacitors of the usual tolerance can have in series. A
 * supply that feeds it, or a start that was another one, looks the same; live it is either way.
 */
function nearHalf(
  { startVoltage, second, instrument }: DischargeInput,
  measured: KnownTimeConstant,
): DischargeFinding[] {
  const stands = measured.findings.some(({ code }) => code === 'no-fall-shown');
  if (!stands || startVoltage.kind !== 'value' || second.kind !== 'value') return [];
  const share = limitValue('capacitor-tolerance') / 200;
  const { lo, hi } = shownVolts(second, instrument);
  const near = hi >= startVoltage.value * (0.5 - share) && lo <= startVoltage.value * (0.5 + share);
  if (!near || lo < limitValue('touch-voltage')) return [];
  const readings = ['startVoltage', 'second'];
  const volts = { startVolts: startVoltage.value, standsVolts: second.value };
  return [
    finding('stands-near-half', 'caution', { readings, limits: ['capacitor-tolerance', 'touch-voltage'], ...volts }),
  ];
}

/** Whether the start is only known from a reading, taken some time after the supply was cut. */
function startsAtReading({ startVoltage, first, instrument }: DischargeInput): boolean {
  if (first.kind === 'missing') return false;
  if (startVoltage.kind === 'missing') return true;
  return shownVolts(startVoltage, instrument).hi < shownVolts(first, instrument).hi;
}

function longest(rows: Wait[], atReading: boolean): DischargeFinding[] {
  const machine = rows.find(({ limit }) => limit === 'residual-voltage-60');
  const touch = rows.find(({ limit }) => limit === 'touch-voltage');
  if (machine === undefined || touch === undefined) return [];
  const { lo, hi } = touch.seconds;
  if (!Number.isFinite(hi)) return [finding('no-end', 'undecided', { limits: ['touch-voltage'] })];
  const found: DischargeFinding[] = [
    finding(atReading ? 'longest-wait-from-reading' : 'longest-wait', 'caution', {
      limits: ['touch-voltage'],
      touchVolts: touch.volts,
      shortestSeconds: lo,
      longestSeconds: hi,
      ...(touch.afterReading !== undefined && { fromSecondSeconds: touch.afterReading }),
    }),
  ];
  if (machine.seconds.hi > limitValue('residual-voltage-time')) {
    const within = limitValue('residual-voltage-time');
    found.push(
      finding('longer-than-standard', 'caution', {
        limits: ['residual-voltage-60', 'residual-voltage-time'],
        longestSeconds: machine.seconds.hi,
        withinSeconds: within,
        volts: machine.volts,
      }),
    );
  }
  return found;
}

function disagreements(
  { timeConstant: stated }: KnownTimeConstant,
  { timeConstant: measured }: KnownTimeConstant,
): DischargeFinding[] {
  if (stated === undefined || measured === undefined) return [];
  if (measured.lo > stated.hi) {
    return [finding('slower-than-values', 'fail', { measuredSeconds: measured.lo, statedSeconds: stated.hi })];
  }
  if (measured.hi >= stated.lo) return [];
  return [finding('faster-than-values', 'caution', { measuredSeconds: measured.hi, statedSeconds: stated.lo })];
}

/** Labels mean the residual voltage of the machine standard. Only readings prove a bus too slow for its label. */
function againstLabel(
  { label }: DischargeInput,
  start: Interval,
  stated: KnownTimeConstant,
  measured: KnownTimeConstant,
): DischargeFinding[] {
  if (label.kind !== 'value') return [];
  const volts = limitValue('residual-voltage-60');
  const allowed = intervalOf(label, { counts: 1 }).hi;
  const shortest = ({ timeConstant }: KnownTimeConstant) =>
    timeConstant ? span({ start, timeConstant }, volts).lo : 0;
  const parts = (seconds: number) => ({
    readings: ['label'],
    limits: ['residual-voltage-60' as const],
    seconds,
    labelSeconds: label.value,
    volts,
  });
  if (shortest(measured) > allowed) {
    return [finding('slower-than-label', 'fail', parts(shortest(measured)))];
  }
  if (shortest(stated) > allowed) {
    return [finding('values-beyond-label', 'caution', parts(shortest(stated)))];
  }
  return [];
}

const stepAfter: Partial<Record<DischargeFinding['code'], DischargeStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'voltage-rises': ['find-feed'],
  'slower-than-values': ['suspect-bleeder'],
  'slower-than-label': ['suspect-bleeder'],
  'start-missing': ['type-discharge-data'],
  'discharge-data-missing': ['type-discharge-data'],
  'value-impossible': ['type-discharge-data'],
  'pair-incomplete': ['repeat-pair'],
  'times-equal': ['repeat-pair'],
  'stands-near-half': ['treat-as-live'],
  'no-fall-shown': ['repeat-pair'],
  'no-end': ['repeat-pair'],
  'longest-wait': ['wait-then-measure'],
  'longest-wait-from-reading': ['wait-then-measure'],
};

/** Whatever was found, the last step is to measure. */
function steps(findings: readonly DischargeFinding[]): Step<DischargeStepCode>[] {
  const codes = findings.flatMap(({ code }) => stepAfter[code] ?? []);
  return [...new Set<DischargeStepCode>([...codes, 'prove-dead'])].map((code) => step(code));
}
