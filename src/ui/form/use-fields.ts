import { useMemo } from 'preact/hooks';
import type { FormField, Typed } from '../../kernel/form/field.ts';
import { type FieldError, type ReadForm, readForm } from '../../kernel/form/read-form.ts';
import { useEntries } from './use-entries.ts';
import { type UnitOfRow, useRowUnits } from './use-row-units.ts';

/** What the controls of a form work with. Each control is drawn from `typed`, and from nothing else. */
export interface FieldsState {
  typed: Typed;
  /** The form as typed at this moment, for the line beside each field. */
  read: ReadForm;
  /** What to say beside a field: an error that the entries had when they last settled, as long as it is true. */
  errors: Readonly<Record<string, FieldError>>;
  /** What is shown beside a field, by its id: where its entry comes from. */
  notes: Readonly<Record<string, string>>;
  /** The unit that a row of readings offers to a field, or has given to its figure. */
  rowUnits: Record<'offered' | 'taken', (id: string) => UnitOfRow | undefined> & {
    lastTaken: string | undefined;
    /** The figure of this field with the unit of the row, which the person must confirm. */
    inDoubt: (id: string) => string | undefined;
  };
  type: (id: string, value: string) => void;
  /** The person left the field. */
  leave: () => void;
  choose: (id: string, value: string) => void;
  /** The unit of the row is meant in this field. */
  confirmRowUnit: (id: string) => void;
  /** The same answer to several questions at once. */
  chooseAll: (ids: readonly string[], value: string) => void;
}

interface Options {
  fields: readonly FormField[];
  start: Typed;
  notes?: FieldsState['notes'];
  onTyped?: ((typed: Typed) => void) | undefined;
  onSettled: (settled: Typed) => void;
}

interface Fields extends FieldsState {
  settled: Typed;
  pending: boolean;
  /** Changes the whole form at once. Returns the entries before. */
  replace: (next: Typed) => Typed;
}

const noNotes = {};

/** The state of a form that has fields: what is typed, and how it reads. */
export function useFields({ fields, start, notes = noNotes, onTyped, onSettled }: Options): Fields {
  const rowUnits = useRowUnits(fields);
  const entries = useEntries({ start, complete: rowUnits.complete, onTyped, onSettled });
  const { typed, settled, pending } = entries;
  const read = useMemo(() => readForm(fields, rowUnits.complete(typed)), [fields, typed]);
  const settledErrors = useMemo(() => readForm(fields, settled).errors, [fields, settled]);
  const errors = Object.entries(read.errors).filter(([id]) => settledErrors[id] !== undefined);
  const changed = (id: string, value: string) => (before: Typed) => ({ ...before, [id]: value });
  return {
    typed,
    settled,
    pending,
    read,
    errors: Object.fromEntries(errors),
    notes,
    rowUnits: {
      offered: (id) => rowUnits.offered(id, typed),
      taken: (id) => rowUnits.taken(id, typed),
      lastTaken: rowUnits.lastTaken(typed),
      inDoubt: (id) => rowUnits.inDoubt(id, typed),
    },
    type: (id, value) => {
      rowUnits.begin(id);
      entries.type(changed(id, value));
    },
    leave: () => {
      entries.leave();
      rowUnits.end();
    },
    choose: (id, value) => {
      if (rowUnits.isAt(id)) rowUnits.end();
      entries.replace(changed(id, value));
    },
    confirmRowUnit: (id) => {
      void entries.replace((before) => ({ ...before, [id]: rowUnits.confirm(id, before) ?? before[id] ?? '' }));
      rowUnits.end();
    },
    replace: (next) => {
      rowUnits.end();
      return entries.replace(() => next);
    },
    chooseAll: (ids, value) => {
      if (ids.some(rowUnits.isAt)) rowUnits.end();
      void entries.replace((before) => ({ ...before, ...Object.fromEntries(ids.map((id) => [id, value])) }));
    },
  };
}
