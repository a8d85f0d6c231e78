import fc from 'fast-check';
import { callFields, readCall } from '../../../src/call/form.ts';

/** Any form of a call, as typed: choices, ticks, numbers and words, each of them also left empty. */
export const anyCallForm = fc.record(
  Object.fromEntries(
    callFields.map((field) => {
      const values =
        field.kind === 'choice'
          ? ['', ...field.options.map(({ value }) => value)]
          : field.kind === 'tick'
            ? ['', 'yes']
            : ['', '3', '17', 'Line 2, the Lift (invented)', '=1+1', 'nobody knows'];
      return [field.id, fc.constantFrom(...values)];
    }),
  ),
);

export const anyCall = anyCallForm.map(readCall);
