import type { FieldError } from './read-form.ts';
import type { FormState } from './use-form.ts';

/** The error to show beside a field: only once the person has paused or left, and no longer than it is true. */
export function fieldError({ outcome, read }: FormState, id: string): FieldError | undefined {
  return outcome.state === 'unreadable' && outcome.errors[id] !== undefined ? read.errors[id] : undefined;
}
