import { busReadingFor, newestBusReading } from '../../guide/dead-proofs.ts';
import { suspectedAnyway } from '../../guide/evidence.ts';
import { shownTime } from '../../record/iso-time.ts';
import type { MeasurementStepId } from '../../record/step-forms.ts';
import { stretchAt } from '../../record/stretch.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { isBlank, type Typed } from '../form/field.ts';
import { recordAnswers } from './record-answers.ts';
import { stepCalculators } from './step-calculators.ts';

export interface Prefill {
  /** What the form starts with: what was typed in it, and what the record knows. */
  start: Typed;
  /** Beside which fields it must be said where their entry comes from. */
  notes: Record<string, string>;
}

/** The start of a calculator within a visit. What was typed in it before is never replaced, only what is empty filled. */
export function prefill(visit: VisitRecord, id: MeasurementStepId, now: string): Prefill {
  const typed = stillTrue(visit, id, now);
  const offers = [...fromEarlierSteps(visit, id, now), ...fromInstrument(visit, id, typed)];
  const taken = offers.filter(({ value, field }) => value !== '' && (typed[field] ?? '').trim() === '');
  const differing = offers
    .filter(({ value, field }) => value !== '' && (typed[field] ?? '').trim() !== '')
    .filter(({ value, field, source }) => source !== undefined && typed[field] !== value);
  return {
    start: { ...typed, ...Object.fromEntries(taken.map(({ field, value }) => [field, value])) },
    notes: Object.fromEntries([
      ...(id === 'bridge' && busReading(visit, now) === undefined ? busNote(visit) : []),
      ...taken.flatMap(({ field, note }) => (note === undefined ? [] : [[field, note]])),
      ...differing.map(({ field, source, value }) => [field, `${source} says ${value}.`]),
    ]),
  };
}

interface Offer {
  field: string;
  value: string;
  note?: string;
  /** Where it comes from, if it must be said when it differs from what stands in the field. */
  source?: string;
}

/** What was typed in the step, but for a bus reading of an earlier stretch of work. */
function stillTrue(visit: VisitRecord, id: MeasurementStepId, now: string): Typed {
  const step = visit.steps[id];
  if (step === undefined) return {};
  const { busVoltage: _old, ...others } = step.form;
  return id === 'bridge' && step.stretch < stretchAt(visit, now) ? others : step.form;
}

/** The bus as it was last measured, if that still holds at `now`: its text and when it was measured. */
export function busReading(visit: VisitRecord, now: string): { value: string; at: string } | undefined {
  const id = busReadingFor(recordAnswers(visit, now), 'bridge');
  const step = id && visit.steps[id];
  const value = step?.form.busVoltage ?? '';
  return step === undefined || value === '' ? undefined : { value, at: step.readAt.busVoltage ?? step.at };
}

/** Why nothing is filled in, where there was a reading once. */
function busNote(visit: VisitRecord): [string, string][] {
  const id = newestBusReading(recordAnswers(visit, visit.changedAt));
  const at = id && (visit.steps[id]?.readAt.busVoltage ?? visit.steps[id]?.at);
  return at === undefined
    ? []
    : [['busVoltage', `Last measured ${shownTime(at)}. That no longer holds: measure it now.`]];
}

function fromEarlierSteps(visit: VisitRecord, id: MeasurementStepId, now: string): Offer[] {
  switch (id) {
    case 'bridge': {
      const bus = busReading(visit, now);
      const measured = bus && `measured ${shownTime(bus.at)}`;
      return [
        {
          field: 'busVoltage',
          value: bus?.value ?? '',
          note: `Filled in from your last lockout step, ${measured}. Measure again if you have left the cabinet since.`,
          source: `Your last lockout step, ${measured},`,
        },
        { field: 'motorLeads', value: visit.steps['disconnect-leads']?.form.done === 'yes' ? 'off' : '' },
      ];
    }
    case 'insulation':
      return [{ field: 'occasion', value: 'after-trip' }];
    case 'isolation':
      return [...joinedStage(visit), { field: 'suspectedAnyway', value: suspected(visit, now) ? 'yes' : '' }];
    default:
      return [];
  }
}

/** The insulation step is the joined stage: the same readings at the same place. */
function joinedStage(visit: VisitRecord): Offer[] {
  const insulation = visit.steps.insulation?.form ?? {};
  const offer = (field: string, from: string): Offer => ({
    field,
    value: insulation[from] ?? '',
    note: 'Filled in from the insulation step.',
    source: 'The insulation step',
  });
  return [
    ...['U', 'V', 'W', 'PE'].map((terminal) => offer(`joined${terminal}`, terminal)),
    ...['testVoltage', 'windingTemperature', 'temperatureUnit', 'correction'].map((field) => offer(field, field)),
  ];
}

function suspected(visit: VisitRecord, now: string): boolean {
  return suspectedAnyway(recordAnswers(visit, now));
}

/** What the person calls each instrument, as the form of the visit offers it. */
export const instrumentOf: Record<MeasurementStepId, readonly string[]> = {
  bridge: ['Multimeter'],
  insulation: ['Insulation tester'],
  isolation: ['Insulation tester'],
  winding: ['Milliohm meter', 'Multimeter'],
  'winding-motor': ['Milliohm meter', 'Multimeter'],
};

/** Readings that the record has judged without an accuracy are not shown as if they were judged with it. */
function fromInstrument(visit: VisitRecord, id: MeasurementStepId, typed: Typed): Offer[] {
  if (!isBlank(stepCalculators[id].fields, typed)) return [];
  const used = instrumentOf[id]
    .map((what) => visit.instruments.find((instrument) => instrument.what === what))
    .find((instrument) => instrument !== undefined);
  if (used === undefined) return [];
  const note = `From the accuracy that you noted for the ${used.what.toLowerCase()}.`;
  const { percent, counts } = readAccuracy(used.accuracy);
  return [
    { field: 'accuracyPercent', value: percent, note },
    { field: 'accuracyCounts', value: counts, note },
  ];
}

/** The two usual figures of a data sheet, `±(2.1 % + 6 counts)`; empty where the text does not say them plainly. */
export function readAccuracy(text: string): { percent: string; counts: string } {
  const percents = [...text.matchAll(/(\d+(?:[.,]\d+)?)\s*%/g)];
  const counts = [...text.matchAll(/(\d+)\s*(?:counts?|digits?|dgts?|d)\b/gi)];
  const only = (found: RegExpMatchArray[]) => (found.length === 1 ? (found[0]?.[1] ?? '') : '');
  return { percent: only(percents), counts: only(counts) };
}
