import type { FieldError } from '../../kernel/form/read-form.ts';
import type { FieldsState } from './use-form.ts';

/** The error to show beside a field: only once the person has paused or left, and no longer than it is true. */
export function fieldError({ errors, read }: Pick<FieldsState, 'errors' | 'read'>, id: string): FieldError | undefined {
  return errors[id] === undefined ? undefined : read.errors[id];
}
