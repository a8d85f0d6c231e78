import { useLayoutEffect, useMemo, useState } from 'preact/hooks';
import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { CalculatorForm, Outcome } from '../../kernel/form/calculator-form.ts';
import { blankForm, fillForm, isUntouched, type Typed } from '../../kernel/form/field.ts';
import { caseInAddress, openedByReload } from './form-start.ts';
import { keepEntries } from './kept-entries.ts';
import { type LateRule, useLateRule } from './late-rule.ts';
import { type FieldsState, useFields } from './use-fields.ts';

/** An example visit, as far as one calculator needs it. */
export interface WorkedVisit {
  id: string;
  title: string;
  form: Typed;
}

/** What readings say when they are compared with earlier ones; `short`: a few words beside the verdict's own. */
export interface EarlierLine {
  short: string;
  text: string;
}

/** What ties a calculator to the visit that it is a step of. */
export interface VisitTie {
  /** What the record offers in fields that the person has not filled: alone it is no entry, and nothing is judged. */
  offered: Typed;
  /** What earlier visits say about the readings: beside the verdict, which it never changes. */
  earlier?: readonly EarlierLine[];
  /** Takes each key, so that it can be kept. */
  onTyped: (typed: Typed) => void;
  /** Takes what the person has entered or changed, once it has settled. */
  onSettled: (typed: Typed) => void;
}

export interface CalculatorProps {
  visits: WorkedVisit[];
  /** What the form begins with: typed before the script came, kept on this device, or kept in a visit. */
  start?: Typed;
  /** Since when the entries are kept, for people: they may belong to another axis. See `KeptEntries`. */
  kept?: { since: string; outdated: boolean };
  /** Given if the form is a step of a visit, which keeps the entries. */
  visit?: VisitTie;
  /** What is shown beside a field, by its id: where its entry comes from. */
  notes?: FieldsState['notes'];
}

/** Something that changed the whole form at once, and the way back. */
interface Change {
  text: string;
  back: { label: string; text: string; typed: Typed };
}

export interface FormState<A extends Assessment = Assessment> extends FieldsState {
  /** What is said about the entries that have settled. */
  outcome: Outcome<A>;
  /** Something was typed that the outcome does not know yet, or the rule has not come. */
  pending: boolean;
  /** Tries once more to load the rule; given only if it could not be loaded. */
  retry: (() => void) | undefined;
  /** The entries that the outcome is about. */
  settled: Typed;
  change: Change | undefined;
  fill: (values: Typed, text: string) => void;
  clear: () => void;
  undo: () => void;
}

/** What a calculator needs before the first entry. */
export interface LateCalculator<A extends Assessment> extends Pick<CalculatorForm<A>, 'name' | 'title' | 'fields'> {
  /** Comes with the first entry. */
  rule: LateRule<A>;
}

/** The state of a calculator's form: its fields, the outcome, kept entries, the case in the address, undo. */
export function useForm<A extends Assessment>(
  { fields, name, rule }: LateCalculator<A>,
  { visits, start = {}, kept, visit, notes }: CalculatorProps,
): FormState<A> {
  const [change, setChange] = useState<Change>();
  const form = useFields({
    fields,
    // The first drawing of a form that the server drew is blank, as the server's is; what it begins with comes next.
    start: fillForm(fields, visit === undefined ? {} : start),
    ...(notes && { notes }),
    onTyped: visit?.onTyped,
    onSettled: (settled) => {
      if (visit !== undefined) visit.onSettled(settled);
      else keepEntries(name, isUntouched(fields, settled) ? undefined : settled);
    },
  });
  const wanted = !isUntouched(fields, form.typed);
  const { judge, retry } = useLateRule(rule, wanted);
  const unjudged = judge === undefined && wanted;
  const replace = (next: Typed, text: string, label = 'Undo', undone = 'Undone.') =>
    setChange({ text, back: { label, text: undone, typed: form.replace(next) } });

  // Before the next event: a key pressed in between would be overwritten.
  useLayoutEffect(() => {
    if (visit !== undefined) return;
    const begun = fillForm(fields, start);
    if (kept !== undefined) replace(begun, keptText(kept), 'Clear them', 'Cleared.');
    else if (!isUntouched(fields, begun)) form.replace(begun);
    const fillFromAddress = () => {
      const worked = visits.find(({ id }) => id === caseInAddress());
      if (worked !== undefined) replace(fillForm(fields, worked.form), `Filled in: ${worked.title} (invented).`);
    };
    // A reload keeps what the person changed since the link was opened.
    if (!openedByReload() || isUntouched(fields, begun)) fillFromAddress();
    addEventListener('hashchange', fillFromAddress);
    return () => removeEventListener('hashchange', fillFromAddress);
  }, []);

  return {
    ...form,
    // Without an entry there is nothing to judge.
    outcome: useMemo(() => judge?.(form.settled, visit?.offered) ?? { state: 'blank' }, [form.settled, judge]),
    pending: form.pending || unjudged,
    retry: unjudged ? retry : undefined,
    change,
    fill: (values, text) => replace(fillForm(fields, values), text),
    clear: () => replace(blankForm(fields), 'Cleared.'),
    undo: () => change && replace(change.back.typed, change.back.text),
  };
}

function keptText({ since, outdated }: { since: string; outdated: boolean }): string {
  const again =
    ' Left out is what may have changed since: bus voltage, support of the axis, what is off or on. Look and measure again.';
  return `Kept on this device from ${since}.${outdated ? again : ''}`;
}
