import { type Step, step } from '../../../kernel/assessment/assessment.ts';
import type { FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { Lacking } from './conviction.ts';
import type { BridgeFinding } from './findings.ts';

export type BridgeStepCode =
  | FigureStepCode
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'discharge-residual'
  | 'take-motor-leads-off'
  | 'state-motor-leads'
  | 'hold-tips-together'
  | 'exchange-leads'
  | 'type-exchanged-row'
  | 'read-first-again'
  | 'read-row-again'
  | 'read-odd-again'
  | 'read-third-time'
  | 'read-bus-again'
  | 'clear-the-bus'
  | 'measure-missing'
  | 'use-higher-range'
  | 'repeat-short'
  | 'repeat-more-exactly'
  | 'compare-known-good'
  | 'keep-power-off'
  | 'replace-complete-drive'
  | 'test-motor-and-cable'
  | 'test-insulation-next';

const stepAfter: Partial<Record<BridgeFinding['code'], BridgeStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'bus-not-measured': ['measure-bus'],
  'bus-not-discharged': ['wait-and-measure-bus'],
  'bus-residual-voltage': ['discharge-residual'],
  'all-open': ['hold-tips-together'],
  'motor-leads-connected': ['take-motor-leads-off'],
  'motor-leads-not-stated': ['state-motor-leads'],
  'rail-incomplete': ['measure-missing'],
  'rail-range-too-low': ['use-higher-range'],
  'rail-range-not-noted': ['use-higher-range'],
  'rail-short-possible': ['repeat-short'],
  'rail-all-short': ['exchange-leads'],
  'rail-read-forward': ['type-exchanged-row'],
  'rail-first-odd': ['read-first-again'],
  'rail-still-climbing': ['read-row-again'],
  'rail-first-contradicts': ['read-row-again'],
  'rail-uneven': ['read-odd-again', 'compare-known-good'],
  'rail-too-close': ['repeat-more-exactly'],
  'again-contradicts': ['read-third-time'],
  'again-does-not-fit': ['read-third-time'],
  'sister-differs': ['compare-known-good'],
  'bus-shorted': ['clear-the-bus', 'read-bus-again'],
  'bus-low': ['clear-the-bus', 'read-bus-again'],
  'bridge-failed': ['replace-complete-drive', 'test-motor-and-cable'],
  'bridge-passed': ['test-insulation-next'],
};

const stepFor: Record<Lacking, BridgeStepCode[]> = {
  'motor-leads-off': ['state-motor-leads'],
  'nothing-else-on-bus': ['clear-the-bus'],
  'second-reading': ['read-odd-again'],
  'steady-first': ['read-first-again', 'read-odd-again'],
  'row-that-stands': ['read-row-again'],
  'low-reading': ['read-odd-again', 'compare-known-good'],
  'unlike-sister': ['compare-known-good'],
  'sound-sister': ['read-odd-again', 'compare-known-good'],
};

/** Each step once, in the order of the findings. */
export function nextSteps(findings: readonly BridgeFinding[]): Step<BridgeStepCode>[] {
  const codes = findings.flatMap((one): BridgeStepCode[] => {
    if (one.code === 'bridge-suspect') return ['keep-power-off', ...one.lacking.flatMap((lack) => stepFor[lack])];
    if (one.code === 'rail-lower-than-usual')
      return one.severity === 'undecided' ? ['exchange-leads', 'compare-known-good'] : ['compare-known-good'];
    return stepAfter[one.code] ?? [];
  });
  return [...new Set(codes)].map((code) => step(code));
}
