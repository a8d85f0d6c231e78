import fc from 'fast-check';
import { newVisit } from '../../../../../src/visit/record/change-visit.ts';
import type { StepRecord, VisitRecord } from '../../../../../src/visit/record/visit-schema.ts';
import { stepIds } from '../../../../../src/visit/steps/ids.ts';
import { runs } from '../../../../support/runs.ts';
import { at, failed } from './typical-visit.ts';

/** How many whole visits a property is tried with: each costs as much as a hundred readings. */
export const wholeVisits = Math.min(runs, 2000);

/** Any text a person could paste: other scripts, quotes, control characters and half surrogates among it. */
const text = fc.oneof(
  fc.string({ maxLength: 60 }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.string({ unit: fc.integer({ min: 0, max: 0xffff }).map((one) => String.fromCharCode(one)), maxLength: 20 }),
  fc.constantFrom('', '450k', '2,2 MΩ', '>700M', '"}{', '</script><script>', '__proto__', '\u0000'),
);

const fieldId = fc.stringMatching(/^[A-Za-z][A-Za-z0-9]{0,39}$/);
const number = fc.integer({ min: 0, max: 1_000_000 });
const time = fc.integer({ min: -1_000_000, max: 1_000_000 }).map(at);

export const arbitraryForm = fc.dictionary(fieldId, text, { maxKeys: 12, noNullPrototype: true });

const step: fc.Arbitrary<StepRecord> = fc
  .record({
    seq: number,
    at: time,
    stretch: number,
    form: arbitraryForm,
    readAt: fc.dictionary(fieldId, time, { maxKeys: 4, noNullPrototype: true }),
    kept: fc.boolean(),
  })
  .map(({ kept, ...one }) => (kept ? { ...one, snapshot: failed } : one));

/** Any record that fits the schema. */
export const arbitraryVisit: fc.Arbitrary<VisitRecord> = fc
  .record({
    id: fc.stringMatching(/^[A-Za-z0-9_-]{8,64}$/),
    revision: number,
    seq: number,
    machine: text,
    axis: text,
    controllerMessage: text,
    notes: text,
    servedAxes: fc.array(fc.record({ drive: text, axes: fc.array(text, { maxLength: 3 }) }), { maxLength: 3 }),
    createdAt: time,
    changedAt: time,
    steps: fc.dictionary(fc.constantFrom(...stepIds), step, { noNullPrototype: true }),
    restart: fc.option(arbitraryForm, { nil: undefined }),
  })
  .map(({ restart, ...parts }) => ({
    ...newVisit(parts.id, parts.createdAt),
    ...parts,
    ...(restart && { restart }),
  }));
