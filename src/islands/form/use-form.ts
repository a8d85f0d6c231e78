import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Assessment } from '../../calc/index.ts';
import { caseInAddress, openedByReload } from './address.ts';
import type { CalculatorForm, LateForm, Outcome } from './calculator-form.ts';
import { blankForm, fillForm, isBlank, type Typed } from './field.ts';
import { keepTyped } from './keep.ts';
import { type ReadForm, readForm } from './read-form.ts';
import { useOutcome } from './use-outcome.ts';

/** An example visit, as far as one calculator needs it. */
export interface WorkedVisit {
  id: string;
  title: string;
  form: Typed;
}

export interface IslandProps {
  visits: WorkedVisit[];
  /** What the browser had in the fields before the script came, or what was kept in this tab. */
  start?: Typed;
  /** Some of it was kept from before: the person is told, since it may belong to another axis. */
  startIsKept?: boolean;
  /** Where the form is part of a visit: hears each change that has settled. The tab then keeps nothing of its own. */
  onSettled?: (typed: Typed) => void;
  /** Said beside a field, by its id: where its entry comes from. */
  notes?: Readonly<Record<string, string>>;
}

/** Something that changed the whole form at once, and how it was before. */
interface Change {
  text: string;
  before: Typed;
}

export interface FormState<A extends Assessment = Assessment> {
  typed: Typed;
  /** The form as it stands at this moment, for the echo beside each field. */
  read: ReadForm;
  /** What is said about it; follows when the person pauses or leaves a field. */
  outcome: Outcome<A>;
  change: Change | undefined;
  notes: Readonly<Record<string, string>>;
  type: (id: string, value: string) => void;
  /** Judge soon: the person left the field. */
  leave: () => void;
  choose: (id: string, value: string) => void;
  fill: (values: Typed, text: string) => void;
  clear: () => void;
  undo: () => void;
}

/** Long enough to finish typing `450k` with a gloved thumb, short enough to feel live. */
const pauseMilliseconds = 700;

/** A message that appears under the pointer moves what the person is about to press: the press comes first. */
const leaveMilliseconds = 250;

/** The state of a calculator's form. The first render equals the server's, which knows of no entries. */
export function useForm<F extends string, S extends string, A extends Assessment<F, S>>(
  form: CalculatorForm<F, S, A> | LateForm<F, S, A>,
  props: IslandProps,
): FormState<A> {
  const { fields, name } = form;
  const [typed, setTyped] = useState<Typed>(() => fillForm(fields, props.start ?? {}));
  const [settled, setSettled] = useState<Typed>(() => blankForm(fields));
  const [change, setChange] = useState<Change>();
  const [live, setLive] = useState(() => fields.every(({ id }) => typed[id] === settled[id]));
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const ahead = useRef<ReturnType<typeof setTimeout>>();
  const latest = useRef(typed);
  latest.current = typed;
  const listener = useRef(props.onSettled);
  listener.current = props.onSettled;

  const unkept = useRef<Typed>();
  const { outcome, judgeAhead } = useOutcome(form, settled);

  const keep = () => {
    if (unkept.current !== undefined) keepTyped(name, isBlank(fields, unkept.current) ? undefined : unkept.current);
    unkept.current = undefined;
  };
  const settle = (next: Typed) => {
    clearTimeout(ahead.current);
    clearTimeout(timer.current);
    timer.current = undefined;
    setSettled(next);
    if (listener.current !== undefined) return listener.current(next);
    unkept.current = next;
    // The verdict first: a browser takes its time to write.
    setTimeout(keep);
  };
  const settleIn = (milliseconds: number) => {
    clearTimeout(timer.current);
    clearTimeout(ahead.current);
    timer.current = setTimeout(() => settle(latest.current), milliseconds);
    ahead.current = setTimeout(() => judgeAhead(latest.current), milliseconds / 2);
  };
  const put = (next: Typed) => {
    latest.current = next;
    setTyped(next);
  };
  const replace = (next: Typed, text: string) => {
    setChange({ text, before: latest.current });
    put(next);
    settle(next);
  };

  useEffect(() => {
    // A blank form stands there already as the server drew it.
    if (!live || listener.current !== undefined) {
      setLive(true);
      settle(latest.current);
    }
    if (props.startIsKept)
      setChange({ text: 'These entries are from before, in this tab.', before: blankForm(fields) });
    const fillFromAddress = () => {
      const visit = props.visits.find(({ id }) => id === caseInAddress());
      if (visit !== undefined) replace(fillForm(fields, visit.form), `Filled in: ${visit.title} (invented).`);
    };
    // A reload keeps what the person changed since the link was opened.
    if (!openedByReload() || isBlank(fields, latest.current)) fillFromAddress();
    // Whoever leaves the page or the step before the pause is over loses nothing.
    const settleAtOnce = () => {
      if (timer.current !== undefined) settle(latest.current);
      keep();
    };
    addEventListener('hashchange', fillFromAddress);
    addEventListener('pagehide', settleAtOnce);
    document.addEventListener('visibilitychange', settleAtOnce);
    return () => {
      removeEventListener('hashchange', fillFromAddress);
      removeEventListener('pagehide', settleAtOnce);
      document.removeEventListener('visibilitychange', settleAtOnce);
      settleAtOnce();
    };
  }, []);

  const shown = live ? typed : settled;
  return {
    typed,
    read: useMemo(() => readForm(fields, shown), [shown]),
    outcome,
    change,
    notes: props.notes ?? {},
    type: (id, value) => {
      put({ ...latest.current, [id]: value });
      settleIn(pauseMilliseconds);
    },
    leave: () => settleIn(leaveMilliseconds),
    choose: (id, value) => {
      put({ ...latest.current, [id]: value });
      settle(latest.current);
    },
    fill: (values, text) => replace(fillForm(fields, values), text),
    clear: () => replace(blankForm(fields), 'Cleared.'),
    undo: () => change && replace(change.before, 'Undone.'),
  };
}
