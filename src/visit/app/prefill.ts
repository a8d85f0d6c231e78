import { isBlank, type Typed } from '../../kernel/form/field.ts';
import { parseReading } from '../../kernel/reading/parse-reading.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import { busReading, busTyped } from '../bus-reading.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { newestBusReading } from '../guide/dead-proofs.ts';
import { pointsAtCableOrMotor } from '../guide/evidence.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { stepCalculators } from '../steps/calculators.ts';
import { type MeasuredStepId, questions, type VisitAnswers } from '../steps/questions.ts';
import { prefillTexts } from '../words/visit.ts';

export interface Prefill {
  /** The texts that the form starts with: what was typed in it, and what the record knows. */
  start: Typed;
  /** By field: where its entry comes from. */
  notes: Record<string, string>;
}

/** The start of a calculator within a visit. Only empty fields are filled; nothing typed is replaced. */
export function prefill(evaluated: EvaluatedVisit, id: MeasuredStepId): Prefill {
  const typed = stillTrue(evaluated, id);
  const offers = [
    ...fromEarlierSteps(evaluated, id),
    ...fromInstrument(evaluated.visit, id, typed),
    ...fromAxis(evaluated.visit, id),
  ];
  const known = new Set(stepCalculators[id].fields.map((field) => field.id));
  const empty = offers.filter(
    ({ value, field }) => known.has(field) && value !== '' && (typed[field] ?? '').trim() === '',
  );
  // What an earlier step says of these readings goes before what the instrument can do.
  const filled = empty.filter(({ field }, index) => empty.findIndex((other) => other.field === field) === index);
  const differing = offers
    .filter(({ value, field }) => value !== '' && (typed[field] ?? '').trim() !== '')
    .filter(({ value, field, source }) => source !== undefined && typed[field] !== value);
  return {
    start: { ...typed, ...Object.fromEntries(filled.map(({ field, value }) => [field, value])) },
    notes: Object.fromEntries([
      ...((id === 'bridge' || id === 'input-circuit') && busReading(evaluated) === undefined ? busNote(evaluated) : []),
      ...filled.flatMap(({ field, note }) => (note === undefined ? [] : [[field, note]])),
      ...differing.map(({ field, source, value }) => [field, prefillTexts.differs(source ?? '', value)]),
    ]),
  };
}

interface Offer {
  field: string;
  value: string;
  note?: string;
  /** The origin of the value; if given, a typed text that differs from the value gets a note that names it. */
  source?: string;
}

/** What was typed in the step, except a bus reading of an earlier stretch of work. */
function stillTrue({ visit, stretch }: EvaluatedVisit, id: MeasuredStepId): Typed {
  const step = visit.steps[id];
  if (step === undefined) return {};
  const { busVoltage: _old, ...others } = step.form;
  return (id === 'bridge' || id === 'input-circuit') && step.stretch < stretch ? others : step.form;
}

/** Why nothing is filled in although there is an earlier reading. */
function busNote({ visit, answers }: EvaluatedVisit): [string, string][] {
  const id = newestBusReading(answers);
  const step = id && visit.steps[id];
  const at = busTyped(step)?.at ?? step?.at;
  return at === undefined ? [] : [['busVoltage', prefillTexts.busExpired(shownTime(at))]];
}

function fromEarlierSteps(evaluated: EvaluatedVisit, id: MeasuredStepId): Offer[] {
  const { visit, answers } = evaluated;
  switch (id) {
    case 'bridge':
    case 'input-circuit': {
      const bus = busReading(evaluated);
      const measured = bus === undefined ? '' : `measured ${shownTime(bus.at)}`;
      return [
        {
          field: 'busVoltage',
          value: bus?.value ?? '',
          note: prefillTexts.fromLockout(measured),
          source: prefillTexts.lockoutSource(measured),
        },
        { field: 'motorLeads', value: visit.steps['disconnect-leads']?.form.done === 'yes' ? 'off' : '' },
      ];
    }
    case 'insulation':
      return [{ field: 'occasion', value: 'after-trip' }, ...idleCores(answers)];
    case 'isolation':
      return [
        ...joinedStage(visit),
        ...idleCores(answers),
        { field: 'suspectedAnyway', value: pointsAtCableOrMotor(answers) ? 'yes' : '' },
      ];
    default:
      return [];
  }
}

/** A cable without brake and sensor cores has none to connect to PE; whether others are connected is asked each time. */
function idleCores(answers: VisitAnswers): Offer[] {
  return answers['idle-cores']?.answer.cores === 'none' ? [{ field: 'idleCores', value: 'none' }] : [];
}

/** The insulation step is the joined stage: the same readings at the same place. */
function joinedStage(visit: VisitRecord): Offer[] {
  const insulation = visit.steps.insulation?.form ?? {};
  const offer = (field: string, from: string): Offer => ({
    field,
    value: insulation[from] ?? '',
    note: prefillTexts.fromInsulation,
    source: prefillTexts.insulationSource,
  });
  return [
    ...['U', 'V', 'W', 'PE'].map((terminal) => offer(`joined${terminal}`, terminal)),
    offer('joinedTogether', 'together'),
    ...['rowKind', 'idleCores', 'filter', 'testVoltage', 'windingTemperature', 'temperatureUnit', 'correction'].map(
      (field) => offer(field, field),
    ),
  ];
}

/** The cable as the register knows it. Its length and section are facts about the axis, not readings of this visit. */
function fromAxis({ cable }: VisitRecord, id: MeasuredStepId): Offer[] {
  if (cable === undefined || (id !== 'insulation' && id !== 'isolation')) return [];
  const { metres, section, material } = cable;
  const note = prefillTexts.fromRegister;
  const offers: Offer[] = [
    { field: 'peMetres', value: metres, note },
    { field: 'cableMetres', value: metres, note },
    { field: 'peSection', value: section },
    { field: 'cableMaterial', value: material },
  ];
  return offers.filter(({ field, value }) => {
    const asked = stepCalculators[id].fields.find((one) => one.id === field);
    return asked?.kind !== 'choice' || asked.options.some((option) => option.value === value);
  });
}

/** The instrument that is noted for this step. */
export function notedInstrument({ instruments }: VisitRecord, id: MeasuredStepId) {
  return questions[id].instruments
    .map((what) => instruments.find((instrument) => instrument.what === what))
    .find((instrument) => instrument !== undefined);
}

/** What is noted of the instrument, for a blank form only: readings that were judged without it must not get it afterwards. */
function fromInstrument(visit: VisitRecord, id: MeasuredStepId, typed: Typed): Offer[] {
  if (!isBlank(stepCalculators[id].fields, typed)) return [];
  const used = notedInstrument(visit, id);
  if (used === undefined) return [];
  const note = prefillTexts.fromAccuracy(used.what);
  const { percent, counts } = readAccuracy(used.accuracy);
  return [
    { field: 'accuracyPercent', value: percent, note },
    { field: 'accuracyCounts', value: counts, note },
    { field: 'upperLimit', value: highestShown(used.largest), note: prefillTexts.fromLimits(used.what) },
    { field: 'testVoltage', value: onlyVoltage(used.testVoltages), note: prefillTexts.onlyTestVoltage },
  ];
}

/** A text that a calculator reads as a plain resistance; empty otherwise, since an error of another form can't be mended there. */
function highestShown(text = ''): string {
  const read = parseReading(text, 'resistance');
  return read.ok && read.reading.kind === 'value' && read.reading.value > 0 ? text.trim() : '';
}

/** The test voltage, if the tester has one only; which one of several was set is asked: `250/500/1000 V` are three. */
function onlyVoltage(text = ''): string {
  const figures = text.match(/\d+(?:[.,]\d+)?/g) ?? [];
  const [voltage = ''] = text.match(/\d+(?:[.,]\d+)?\s*k?V/gi) ?? [];
  return figures.length === 1 ? voltage : '';
}

/** The two usual figures of a data sheet, `±(2.1 % + 6 counts)`; empty if the text does not state them clearly. */
export function readAccuracy(text: string): { percent: string; counts: string } {
  const percents = [...text.matchAll(/(\d+(?:[.,]\d+)?)\s*%/g)];
  const counts = [...text.matchAll(/(\d+)\s*(?:counts?|digits?|dgts?|d)\b/gi)];
  const only = (matches: RegExpMatchArray[]) => (matches.length === 1 ? (matches[0]?.[1] ?? '') : '');
  return { percent: only(percents), counts: only(counts) };
}
