import type { FormField } from '../../kernel/form/field.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import { notedInstrument } from '../app/prefill.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import type { LimitSnapshot, Snapshot } from '../record/snapshot-schema.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { stepCalculators } from '../steps/calculators.ts';
import type { StepId } from '../steps/ids.ts';
import { isMeasured, type MeasuredStepId, questions } from '../steps/questions.ts';

export interface MeasuredReport {
  id: MeasuredStepId;
  title: string;
  verdict: string;
  /** Name and text of each reading and choice, as typed. */
  readings: { name: string; value: string; isReading: boolean }[];
  /** When the readings were taken, first and last: `05:58` or `05:58 to 06:10`. */
  time: string;
  instrument: string;
  sentences: string[];
  limits: LimitSnapshot[];
}

/** The measurements with instruments, times and findings. Steps without a readable entry are left out. */
export function measuredReports({ visit, steps }: EvaluatedVisit, ids: readonly StepId[]): MeasuredReport[] {
  return ids.filter(isMeasured).flatMap((id) => {
    const step = visit.steps[id];
    const { snapshot, line } = steps[id];
    return step === undefined || snapshot === undefined ? [] : [measuredReport(visit, id, step, line, snapshot)];
  });
}

function measuredReport(
  visit: VisitRecord,
  id: MeasuredStepId,
  { form, readAt }: { form: Record<string, string>; readAt: Record<string, string> },
  verdict: string,
  snapshot: Snapshot,
): MeasuredReport {
  return {
    id,
    title: questions[id].title,
    verdict,
    readings: stepCalculators[id].fields.flatMap((field) => entry(field, form, readAt)),
    time: timeSpan(Object.values(readAt)),
    instrument: instrumentText(visit, id),
    sentences: snapshot.sentences,
    limits: snapshot.limits,
  };
}

/** A choice that still has its initial value is left out: the sentences cover it. */
function entry(
  field: FormField,
  form: Record<string, string>,
  readAt: Record<string, string>,
): MeasuredReport['readings'] {
  const value = (form[field.id] ?? '').trim();
  if (value === '') return [];
  const at = field.id === 'busVoltage' ? readAt[field.id] : undefined;
  const dated = at === undefined ? value : `${value} (${shownTime(at)})`;
  if (field.kind !== 'choice') return [{ name: field.name, value: dated, isReading: true }];
  if (value === field.initial || field.id === 'occasion') return [];
  const label = field.options.find((option) => option.value === value)?.label ?? value;
  return [{ name: field.name, value: label, isReading: false }];
}

function timeSpan(times: readonly string[]): string {
  const clocks = times.map((time) => time.slice(11, 16)).sort();
  const [first = '', last = ''] = [clocks[0], lastIn(clocks)];
  return first === last ? first : `${first} to ${last}`;
}

function instrumentText(visit: VisitRecord, id: MeasuredStepId): string {
  const used = notedInstrument(visit, id);
  if (used === undefined) return 'instrument not noted';
  return [used.what, used.identification, used.accuracy].filter(Boolean).join(', ');
}
