import { limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import type { BaselineState } from '../guide/next-step.ts';

const minutes = () => formatRounded(limitValue('baseline-minutes'), 'min');

/** Sentences of a baseline visit, for screen and report. */
export const baselineTexts = {
  lead: () =>
    `Baseline of a sound axis: output stage, winding, idle cores, insulation. About ${minutes()} after the waiting time, dead and locked out as in any visit. Note winding temperature, test voltage and instruments: without them nothing can be compared.`,
  headline: {
    open: 'Baseline visit',
    complete: 'Baseline complete',
    'not-sound': 'No baseline: not everything passed',
  } satisfies Record<BaselineState, string>,
  complete:
    'Every reading passed, and the axis is connected again. These readings are the reference of this axis and are shown beside those of axes with the same motor. Switch on again by your site’s procedure.',
  notSound:
    'A baseline is of an axis that is well. Nothing is connected again on this. Go on as a visit: it asks for what decides, and keeps every reading.',
  goOn: 'Go on as a visit',
} as const;
