import { useRef, useState } from 'preact/hooks';
import type { ChoiceField, Typed } from '../../kernel/form/field.ts';
import { readForm } from '../../kernel/form/read-form.ts';
import type { FieldsState } from '../../ui/form/use-form.ts';
import { useRedrawOnShow } from '../../ui/form/use-redraw.ts';
import { useSettling } from '../../ui/form/use-settling.ts';
import type { AskedField, VoltageField } from '../steps/fields.ts';

/** The state of the few questions of a step; the calculators' fields work with it as with a calculator's form. */
export function useStepForm(
  fields: readonly AskedField[],
  start: Typed,
  onTyped: (typed: Typed) => void,
  onSettled: (typed: Typed) => void,
): FieldsState {
  const [typed, setTyped] = useState(start);
  const [settled, setSettled] = useState(start);
  const latest = useRef(typed);
  useRedrawOnShow();
  const { onType, onLeave, settle } = useSettling(() => {
    setSettled(latest.current);
    onSettled(latest.current);
  });
  const put = (id: string, value: string) => {
    latest.current = { ...latest.current, [id]: value };
    setTyped(latest.current);
    onTyped(latest.current);
  };
  const readable = fields.filter(isReadable);
  return {
    typed,
    read: readForm(readable, typed),
    errors: readForm(readable, settled).errors,
    notes: {},
    type: (id, value) => {
      put(id, value);
      onType();
    },
    leave: onLeave,
    choose: (id, value) => {
      put(id, value);
      settle();
    },
  };
}

function isReadable(field: AskedField): field is VoltageField | ChoiceField {
  return field.kind === 'reading' || field.kind === 'choice';
}
