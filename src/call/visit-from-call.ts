import { newVisit } from '../visit/record/change-visit.ts';
import type { VisitRecord } from '../visit/record/visit-schema.ts';
import { type Form, textOf } from '../visit/steps/fields.ts';
import type { ChangedThing } from '../visit/steps/symptom/question.ts';
import { readCall } from './form.ts';
import { callNotes } from './notes.ts';
import { type Before, changedBefore } from './rule/facts.ts';

const changedThing: Partial<Record<Before, ChangedThing>> = {
  'motor-changed': 'motor',
  'drive-changed': 'drive',
  'cable-changed': 'cable',
  'parameters-changed': 'parameters',
  'load-changed': 'load',
};

/** The answers of the symptom step as reported, by its own field ids. Not an answer: the person confirms them on site. */
export function symptomReported(form: Form): Form {
  const { moment, canFall, came, of, ...facts } = readCall(form);
  const changed = changedBefore({ ...facts, ...(moment && { moment }) });
  const things = facts.before.flatMap((one) => changedThing[one] ?? []);
  return {
    ...(moment !== undefined && { when: moment }),
    ...(facts.momentUnseen && { when: 'unknown' }),
    ...(canFall !== undefined && { gravityLoaded: canFall }),
    ...(came !== undefined && { came: String(came) }),
    ...(of !== undefined && { of: String(of) }),
    ...(facts.again === 'once' && (came ?? 1) <= 1 && (of ?? 1) <= 1 && { once: 'yes' }),
    ...(changed !== undefined && { changed: changed === 'something' && things.length === 1 ? things[0] : changed }),
  };
}

/**
 * The visit that begins with this call. It has no answered step: what was reported waits in `reported` until it is confirmed.
 * `now`: ISO time with offset, `saidAt`: that of the call.
 */
export function visitFromCall(form: Form, id: string, now: string, saidAt: string): VisitRecord {
  const text = (field: string) => textOf(form, field).trim();
  const symptom = symptomReported(form);
  return {
    ...newVisit(id, now, {
      machine: text('machine'),
      axis: text('axis'),
      controllerMessage: text('message'),
      drive: text('drive'),
      motor: text('motor'),
      site: text('site'),
      notes: callNotes(form, saidAt),
    }),
    ...(Object.keys(symptom).length > 0 && { reported: { at: saidAt, steps: { symptom } } }),
  };
}
