import { lastIn } from '../../calc/last-in.ts';
import type { StepId, Symptom } from '../../guide/answers.ts';
import { shownTime } from '../../record/iso-time.ts';
import type { Form } from '../../record/step-answers.ts';
import { isMeasurement } from '../../record/step-forms.ts';
import type { StepRecord } from '../../record/visit-schema.ts';
import { inspectedPartNames, symptomTexts } from '../../texts/guide-steps.ts';
import { verdictWords } from '../form/verdict-words.ts';
import { stepAnswer } from './record-answers.ts';
import { snapshotOf } from './snapshot.ts';
import { stepFields } from './step-fields.ts';

type Answered = Pick<StepRecord, 'form' | 'readAt'>;

/** The answer of a step in one line, as it stands beside its title. A voltage stands with the time it was measured. */
export function stepLine(id: StepId, step: Answered | undefined): string {
  const form = step?.form ?? {};
  if (Object.values(form).every((value) => value.trim() === '')) return '';
  if (isMeasurement(id)) return measuredLine(id, form);
  if (id === 'find-drive') return driveLine(form);
  if (id === 'inspect') return inspectLine(form);
  if (id === 'symptom') return symptomLine(form);
  const readAt = Object.values(step?.readAt ?? {});
  const measured = readAt.length === 0 ? [] : [`measured ${shownTime(lastIn(readAt.sort()) ?? '')}`];
  return stepFields[id]
    .flatMap((field) => {
      const value = (form[field.id] ?? '').trim();
      if (value === '' || field.id === 'remark') return [];
      if (field.kind === 'reading') return [`${points[field.id]} ${value}`];
      if (field.kind === 'tick') return ticks[field.id] ?? [];
      return [(field.kind === 'choice' && field.options.find((option) => option.value === value)?.label) || value];
    })
    .concat(measured)
    .join(', ');
}

const points: Record<string, string> = { supplyVoltage: 'supply', outputVoltage: 'U V W', busVoltage: 'bus' };

const ticks: Record<string, string[]> = {
  lockedOut: ['Locked out'],
  waited: ['waited'],
  meterProved: ['meter proved'],
  peProved: ['PE proved'],
};

/** A bare "Yes" says nothing without its question. */
const gravity: Record<string, string> = {
  yes: 'an axis can fall',
  no: 'no axis can fall',
  unknown: 'an axis may fall',
  'own-no': 'this axis can’t fall, others not asked for',
};

/** The moment that follows from what was live or moving. */
function symptomLine({ when = '', gravityLoaded = '' }: Form): string {
  const moment = Object.keys(symptomTexts).includes(when) ? symptomTexts[when as Symptom].label : when;
  const falls = Object.keys(gravity).includes(gravityLoaded) ? gravity[gravityLoaded] : gravityLoaded;
  return [moment, falls].filter(Boolean).join(', ');
}

function measuredLine(id: StepId, form: Form): string {
  const verdict = snapshotOf(id, form)?.verdict;
  const left = form.leftOpen === 'yes' ? ', left open' : '';
  return (verdict === undefined ? 'No verdict' : verdictWords[verdict]) + left;
}

function driveLine(form: Form): string {
  const answer = stepAnswer('find-drive', form);
  if (answer === undefined) return '';
  const how = { looked: 'looked at', 'not-permitted': 'from the drawings', known: 'from an earlier record' };
  const output = answer.indicatedAxis === undefined ? [] : [`output ${answer.indicatedAxis} of ${answer.axesOnDrive}`];
  const label = (form.outputLabel ?? '').trim();
  return [...output, ...(label === '' ? [] : [`labelled ${label}`]), how[answer.observation]].join(', ');
}

function inspectLine(form: Form): string {
  const answer = stepAnswer('inspect', form);
  if (answer === undefined) return '';
  const seen = Object.entries(answer.seen).filter(([, damage]) => damage !== 'nothing');
  const names = inspectedPartNames as Record<string, string>;
  return seen.length === 0 ? 'Nothing seen' : seen.map(([part, damage]) => `${names[part]}: ${damage}`).join(', ');
}
