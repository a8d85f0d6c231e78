import { useMemo, useRef } from 'preact/hooks';
import type { MeasurementStepId } from '../../record/step-forms.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import { BridgeCalculator } from '../bridge/BridgeCalculator.tsx';
import type { Typed } from '../form/field.ts';
import { InsulationCalculator } from '../insulation/InsulationCalculator.tsx';
import { IsolationCalculator } from '../isolation/IsolationCalculator.tsx';
import { WindingCalculator } from '../winding/WindingCalculator.tsx';
import { prefill } from './prefill.ts';

const calculators = {
  bridge: BridgeCalculator,
  insulation: InsulationCalculator,
  isolation: IsolationCalculator,
  winding: WindingCalculator,
  'winding-motor': WindingCalculator,
};

interface Props {
  id: MeasurementStepId;
  visit: VisitRecord;
  /** When the page last looked at the clock. */
  now: string;
  /** The guide waits for a decision of this step, or the person has left it open. */
  askToLeaveOpen: boolean;
  onSettled: (typed: Typed) => void;
}

/** A step that is one of the calculators, filled from the record and keeping its entries in it. */
export function MeasuredStep({ id, visit, now, askToLeaveOpen, onSettled }: Props) {
  const Calculator = calculators[id];
  // What is offered when the step is opened stays as it is while the person types.
  const { start, notes } = useMemo(() => prefill(visit, id, now), [id]);
  const form = visit.steps[id]?.form ?? {};
  // A calculator tells at once what it was opened with, offers and all. Only what the person changes is an entry:
  // to open a step must never answer it, nor confirm it.
  const opened = useRef<string>();
  const touched = useRef(false);
  const keep = (typed: Typed) => {
    const text = JSON.stringify(typed);
    opened.current ??= text;
    touched.current ||= text !== opened.current;
    if (!touched.current) return;
    onSettled({ ...typed, leftOpen: form.leftOpen ?? '' });
  };
  return (
    <>
      <Calculator visits={[]} start={start} notes={notes} onSettled={keep} />
      {askToLeaveOpen && (
        <div class="choices tick">
          <label for={`${id}-left-open`}>
            <input
              type="checkbox"
              id={`${id}-left-open`}
              checked={form.leftOpen === 'yes'}
              onChange={(event) => onSettled({ ...start, ...form, leftOpen: event.currentTarget.checked ? 'yes' : '' })}
            />
            <span>I can’t get a decision here. I leave it open and go on: the decision lists it.</span>
          </label>
        </div>
      )}
    </>
  );
}
