import { type Step, step } from '../../../kernel/assessment/assessment.ts';
import type { FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { BridgeDiodeFinding } from './findings.ts';

export type BridgeDiodeStepCode =
  | FigureStepCode
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'discharge-residual'
  | 'take-motor-leads-off'
  | 'state-motor-leads'
  | 'let-readings-settle'
  | 'resistances-first'
  | 'keep-power-off'
  | 'measure-missing'
  | 'exchange-leads'
  | 'hold-tips-together'
  | 'repeat-position'
  | 'repeat-more-exactly'
  | 'take-resistances'
  | 'complete-resistances'
  | 'repeat-both-tests'
  | 'compare-known-good'
  | 'replace-complete-drive'
  | 'test-motor-and-cable'
  | 'test-insulation-next';

const stepAfter: Partial<Record<BridgeDiodeFinding['code'], BridgeDiodeStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'bus-not-measured': ['measure-bus'],
  'bus-not-discharged': ['wait-and-measure-bus'],
  'bus-residual-voltage': ['discharge-residual'],
  'diode-negative': ['wait-and-measure-bus'],
  'diode-drifting': ['wait-and-measure-bus'],
  'motor-leads-connected': ['take-motor-leads-off'],
  'motor-leads-not-stated': ['state-motor-leads'],
  'diode-steadiness-not-stated': ['let-readings-settle'],
  'diode-incomplete': ['measure-missing'],
  'diode-rows-swapped': ['exchange-leads'],
  'diode-one-way': ['repeat-position'],
  'diode-forward-open': ['repeat-position'],
  'diode-all-alike': ['exchange-leads'],
  'diode-short-possible': ['repeat-more-exactly'],
  'diode-too-close': ['repeat-more-exactly'],
  'diode-reverse-unclear': ['let-readings-settle', 'take-resistances'],
  'diode-forward-all-open': ['hold-tips-together', 'compare-known-good'],
  'diode-drop-unusual': ['compare-known-good'],
  'tests-contradict': ['repeat-both-tests'],
  'resistance-undecided': ['complete-resistances'],
  'diode-blind-to-leaks': ['take-resistances'],
  'resistances-after-diodes': ['resistances-first'],
  'diode-suspect': ['keep-power-off', 'repeat-position'],
  'diode-failed': ['replace-complete-drive', 'test-motor-and-cable'],
  'diode-passed': ['test-insulation-next'],
};

/** Each step once, in the order of the findings. */
export function nextSteps(findings: readonly BridgeDiodeFinding[]): Step<BridgeDiodeStepCode>[] {
  const codes = findings.flatMap(({ code }) => stepAfter[code] ?? []);
  return [...new Set(codes)].map((code) => step(code));
}
