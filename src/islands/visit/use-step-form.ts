import { useEffect, useRef, useState } from 'preact/hooks';
import type { ChoiceField, ReadingField, Typed } from '../form/field.ts';
import { readForm } from '../form/read-form.ts';
import type { FormState } from '../form/use-form.ts';
import type { StepField } from './step-fields.ts';

/** As in the calculators: long enough to finish typing with a gloved thumb. */
const pauseMilliseconds = 700;
const leaveMilliseconds = 250;

/** The state of the few questions of a step; the calculators' fields work with it as with a calculator's form. */
export function useStepForm(fields: readonly StepField[], start: Typed, onSettled: (typed: Typed) => void): FormState {
  const [typed, setTyped] = useState(start);
  const [settled, setSettled] = useState(start);
  const latest = useRef(typed);
  const listener = useRef(onSettled);
  listener.current = onSettled;
  const timer = useRef<ReturnType<typeof setTimeout>>();

  const settle = () => {
    clearTimeout(timer.current);
    timer.current = undefined;
    setSettled(latest.current);
    listener.current(latest.current);
  };
  const settleIn = (milliseconds: number) => {
    clearTimeout(timer.current);
    timer.current = setTimeout(settle, milliseconds);
  };
  const put = (id: string, value: string) => {
    latest.current = { ...latest.current, [id]: value };
    setTyped(latest.current);
  };

  useEffect(() => {
    const settleAtOnce = () => {
      if (timer.current !== undefined) settle();
    };
    addEventListener('pagehide', settleAtOnce);
    document.addEventListener('visibilitychange', settleAtOnce);
    return () => {
      removeEventListener('pagehide', settleAtOnce);
      document.removeEventListener('visibilitychange', settleAtOnce);
      settleAtOnce();
    };
  }, []);

  const readable = fields.filter(isReadable);
  const { errors } = readForm(readable, settled);
  return {
    typed,
    read: readForm(readable, typed),
    outcome: Object.keys(errors).length > 0 ? { state: 'unreadable', errors, dangers: [] } : { state: 'blank' },
    change: undefined,
    notes: {},
    type: (id, value) => {
      put(id, value);
      settleIn(pauseMilliseconds);
    },
    leave: () => {
      if (timer.current !== undefined) settleIn(leaveMilliseconds);
    },
    choose: (id, value) => {
      put(id, value);
      settle();
    },
    fill: () => undefined,
    clear: () => undefined,
    undo: () => undefined,
  };
}

function isReadable(field: StepField): field is ReadingField | ChoiceField {
  return field.kind === 'reading' || field.kind === 'choice';
}
