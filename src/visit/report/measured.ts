import { instrumentLine } from '../app/details-fields.ts';
import { notedInstrument } from '../app/prefill.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import type { Instrument } from '../record/instrument-schema.ts';
import type { LimitSnapshot } from '../record/snapshot-schema.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { stepCalculators } from '../steps/calculators.ts';
import type { StepId } from '../steps/ids.ts';
import { isMeasured, type MeasuredStepId, questions } from '../steps/questions.ts';
import { type Circumstance, circumstances, type ReadingRow, readingRows } from './reading-rows.ts';

export interface MeasuredReport {
  id: MeasuredStepId;
  title: string;
  verdict: string;
  fails: boolean;
  /** The finding behind the verdict, in words: `lower transistor of V is shorted`. */
  headline: string;
  rows: ReadingRow[];
  circumstances: Circumstance[];
  instrument: string;
  sentences: string[];
  limits: LimitSnapshot[];
}

/** The measurements with instruments, times and findings. Steps without a readable entry are left out. */
export function measuredReports({ visit, steps }: EvaluatedVisit, ids: readonly StepId[]): MeasuredReport[] {
  return ids.filter(isMeasured).flatMap((id): MeasuredReport[] => {
    const step = visit.steps[id];
    const { snapshot, line: verdict, outcome } = steps[id];
    if (step === undefined || snapshot === undefined || outcome?.state !== 'judged') return [];
    const { fields } = stepCalculators[id];
    const { sentences, limits } = snapshot;
    return [
      {
        ...{ id, verdict, sentences, limits },
        title: questions[id].title,
        headline: outcome.headline,
        fails: snapshot.verdict === 'no-go',
        rows: readingRows(fields, outcome, step, limits),
        circumstances: circumstances(fields, outcome, step),
        instrument: instrumentText(visit, id),
      },
    ];
  });
}

function instrumentText(visit: VisitRecord, id: MeasuredStepId): string {
  const used = notedInstrument(visit, id);
  return used === undefined ? 'not noted' : inWords(used);
}

/** The multimeter that is noted. */
export function meterText({ instruments }: VisitRecord): string {
  const meter = instruments.find(({ what }) => what === 'Multimeter');
  return meter === undefined ? 'not noted' : inWords(meter);
}

/** Name, which one, accuracy, range and test voltages, as far as they are noted. */
const inWords = (used: Instrument): string => [used.what, instrumentLine(used)].filter(Boolean).join(', ');
