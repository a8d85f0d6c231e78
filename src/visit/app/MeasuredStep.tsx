import { useState } from 'preact/hooks';
import { Calculator as BendTestCalculator } from '../../calculators/bend-test/Calculator.tsx';
import { Calculator as BridgeCalculator } from '../../calculators/bridge/Calculator.tsx';
import { Calculator as InputCircuitCalculator } from '../../calculators/input-circuit/Calculator.tsx';
import { Calculator as InsulationCalculator } from '../../calculators/insulation/Calculator.tsx';
import { Calculator as IsolationCalculator } from '../../calculators/isolation/Calculator.tsx';
import { Calculator as WindingCalculator } from '../../calculators/winding/Calculator.tsx';
import type { Typed } from '../../kernel/form/field.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { olderFields, olderLine } from '../steps/bend-test/answer.ts';
import type { MeasuredStepId } from '../steps/questions.ts';
import { useBackground } from './background.ts';
import { prefill } from './prefill.ts';
import { TickInput } from './TickInput.tsx';

const calculators = {
  bridge: BridgeCalculator,
  'input-circuit': InputCircuitCalculator,
  insulation: InsulationCalculator,
  isolation: IsolationCalculator,
  'bend-test': BendTestCalculator,
  winding: WindingCalculator,
  'winding-motor': WindingCalculator,
};

interface Props {
  id: MeasuredStepId;
  evaluated: EvaluatedVisit;
  /** The guide waits for a decision of this step, or the person has left it open. */
  askToLeaveOpen: boolean;
  onTyped: (typed: Typed) => void;
  onSettled: (typed: Typed) => void;
}

/** A step that is one of the calculators, filled from the record and keeping its entries in it. */
export function MeasuredStep({ id, evaluated, askToLeaveOpen, onTyped, onSettled }: Props) {
  const Calculator = calculators[id];
  const form = evaluated.visit.steps[id]?.form ?? {};
  // What is offered when the step is opened stays as it is while the person types.
  const [{ start, notes, typedBefore }] = useState(() => ({ ...prefill(evaluated, id), typedBefore: form }));
  // What an older record says stays in it, beside the readings that replace it.
  const older = olderIn(id, form);
  const whole = (typed: Typed) => ({ ...older, ...typed, leftOpen: form.leftOpen ?? '' });
  const background = useBackground();
  const beside = background?.beside(id) ?? {};
  const earlier = background?.against(evaluated).filter(({ step }) => step === id) ?? [];
  const tie = {
    earlier,
    offered: offeredIn(id, start, typedBefore),
    onTyped: (typed: Typed) => onTyped(whole(typed)),
    onSettled: (typed: Typed) => onSettled(whole(typed)),
  };
  return (
    <>
      {Object.keys(older).length > 0 && (
        <p>
          Noted without readings: {olderLine(older) || 'nothing'}.{older.remark && ` “${older.remark}”`} A quiet test
          does not clear what was seen then.
        </p>
      )}
      <Calculator visits={[]} start={start} notes={joined(notes, beside)} visit={tie} />
      {askToLeaveOpen && (
        <TickInput
          id={`${id}-left-open`}
          label="I can’t get a decision here. I leave it open and go on: the decision lists it."
          value={form.leftOpen ?? ''}
          onChoose={(leftOpen) => onSettled({ ...start, ...form, leftOpen })}
        />
      )}
    </>
  );
}

/** What the record said of this step before its readings were asked for. */
function olderIn(id: MeasuredStepId, form: Typed): Typed {
  const known = id === 'bend-test' ? olderFields.map((field) => field.id) : [];
  return Object.fromEntries(known.flatMap((field) => (form[field] ? [[field, form[field]]] : [])));
}

/** A field may have both: where its entry comes from, and what was read there earlier. */
function joined(notes: Record<string, string>, beside: Record<string, string>): Record<string, string> {
  const fields = new Set([...Object.keys(notes), ...Object.keys(beside)]);
  return Object.fromEntries(
    [...fields].map((field) => [field, [notes[field], beside[field]].filter(Boolean).join(' ')]),
  );
}

/**
 * What the record has filled in and the person has not typed here. The joined readings are the person's own, of the same
 * visit and at the same place: they count.
 */
function offeredIn(id: MeasuredStepId, start: Typed, typedBefore: Typed): Typed {
  if (id === 'isolation') return {};
  return Object.fromEntries(Object.entries(start).filter(([field]) => (typedBefore[field] ?? '').trim() === ''));
}
