import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { CalculatorForm, Outcome } from '../../kernel/form/calculator-form.ts';
import { blankForm, fillForm, isUntouched, type Typed } from '../../kernel/form/field.ts';
import { type FieldError, type ReadForm, readForm } from '../../kernel/form/read-form.ts';
import { caseInAddress, openedByReload } from './address.ts';
import { keepEntries } from './keep.ts';
import { useRedrawOnShow } from './use-redraw.ts';
import { useSettling } from './use-settling.ts';

/** An example visit, as far as one calculator needs it. */
export interface WorkedVisit {
  id: string;
  title: string;
  form: Typed;
}

/** What ties a calculator to the visit that it is a step of. */
export interface VisitTie {
  /** What the record offers in fields that the person has not filled: alone it is no entry, and nothing is judged. */
  offered: Typed;
  /** Takes each key, so that it can be kept. */
  onTyped: (typed: Typed) => void;
  /** Takes what the person has entered or changed, once it has settled. */
  onSettled: (typed: Typed) => void;
}

export interface IslandProps {
  visits: WorkedVisit[];
  /** What the form begins with: typed before the script came, kept on this device, or kept in a visit. */
  start?: Typed;
  /** Since when the entries are kept, for people: they may belong to another axis. See `KeptEntries`. */
  kept?: { since: string; outdated: boolean };
  /** Given where the form is a step of a visit, which keeps the entries. */
  visit?: VisitTie;
  /** Stands beside a field, by its id: where its entry comes from. */
  notes?: Readonly<Record<string, string>>;
}

/** Something that changed the whole form at once, and the way back. */
interface Change {
  text: string;
  back: { label: string; text: string; typed: Typed };
}

/** What the fields of any form work with. Every control is drawn from `typed`, and from nothing else. */
export interface FieldsState {
  typed: Typed;
  /** The form as it stands at this moment, for the line beside each field. */
  read: ReadForm;
  /** What could not be read when the entries last settled. */
  errors: Readonly<Record<string, FieldError>>;
  notes: Readonly<Record<string, string>>;
  type: (id: string, value: string) => void;
  /** Judge soon: the person left the field. */
  leave: () => void;
  choose: (id: string, value: string) => void;
}

export interface FormState<A extends Assessment = Assessment> extends FieldsState {
  /** What is said about the entries that have settled: the person paused or left a field. */
  outcome: Outcome<A>;
  /** Something was typed that the outcome does not know yet. */
  pending: boolean;
  change: Change | undefined;
  fill: (values: Typed, text: string) => void;
  clear: () => void;
  undo: () => void;
}

/** The state of a calculator's form. */
export function useForm<A extends Assessment>(
  form: CalculatorForm<A>,
  { visits, start = {}, kept, visit, notes = {} }: IslandProps,
): FormState<A> {
  const { fields, name } = form;
  // The first drawing of a form that the server drew is blank, as the server's is; what it begins with comes next.
  const [typed, setTyped] = useState<Typed>(() => fillForm(fields, visit === undefined ? {} : start));
  const [settled, setSettled] = useState(typed);
  const [change, setChange] = useState<Change>();
  const latest = useRef(typed);
  useRedrawOnShow();

  const { onType, onLeave, settle } = useSettling(() => {
    setSettled(latest.current);
    if (visit !== undefined) visit.onSettled(latest.current);
    else keepEntries(name, isUntouched(fields, latest.current) ? undefined : latest.current);
  });
  const put = (next: Typed) => {
    latest.current = next;
    setTyped(next);
    visit?.onTyped(next);
  };
  const replace = (next: Typed, text: string, label = 'Undo', undone = 'Undone.') => {
    setChange({ text, back: { label, text: undone, typed: latest.current } });
    put(next);
    settle();
  };

  // Before the next event: a key pressed in between would be overwritten.
  useLayoutEffect(() => {
    if (visit !== undefined) return;
    const begun = fillForm(fields, start);
    if (kept !== undefined) replace(begun, keptText(kept), 'Clear them', 'Cleared.');
    else if (fields.some(({ id }) => begun[id] !== latest.current[id])) {
      put(begun);
      settle();
    }
    const fillFromAddress = () => {
      const worked = visits.find(({ id }) => id === caseInAddress());
      if (worked !== undefined) replace(fillForm(fields, worked.form), `Filled in: ${worked.title} (invented).`);
    };
    // A reload keeps what the person changed since the link was opened.
    if (!openedByReload() || isUntouched(fields, latest.current)) fillFromAddress();
    addEventListener('hashchange', fillFromAddress);
    return () => removeEventListener('hashchange', fillFromAddress);
  }, []);

  const outcome = useMemo(() => form.judge(settled, visit?.offered), [settled]);
  return {
    typed,
    read: readForm(fields, typed),
    errors: outcome.state === 'unreadable' ? outcome.errors : {},
    outcome,
    pending: typed !== settled,
    change,
    notes,
    type: (id, value) => {
      put({ ...latest.current, [id]: value });
      onType();
    },
    leave: onLeave,
    choose: (id, value) => {
      put({ ...latest.current, [id]: value });
      settle();
    },
    fill: (values, text) => replace(fillForm(fields, values), text),
    clear: () => replace(blankForm(fields), 'Cleared.'),
    undo: () => change && replace(change.back.typed, change.back.text),
  };
}

function keptText({ since, outdated }: { since: string; outdated: boolean }): string {
  const again =
    ' The bus voltage and the state of the motor leads are left out: they may have changed. Look and measure again.';
  return `Kept on this device from ${since}.${outdated ? again : ''}`;
}
