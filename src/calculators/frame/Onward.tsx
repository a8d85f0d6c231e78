import type { Typed } from '../../kernel/form/field.ts';
import { type StepLine, trueOfTheMoment } from '../../kernel/form/opening.ts';
import { OpenFilled } from './OpenFilled.tsx';

/** The next calculator, filled with what is known. */
export function nextCalculator({ calculator, words, form }: NonNullable<StepLine['opens']>) {
  const filled = Object.keys(form).length > 0;
  return (
    <p class="step-link">
      <OpenFilled page={`/calculators/${calculator}/`} calculator={calculator} form={form}>
        {filled ? `${words}, with these readings` : words}
      </OpenFilled>
    </p>
  );
}

/** Calculators that are a step of a visit. */
const stepsOfVisits = ['bridge', 'insulation', 'isolation', 'winding'];

/** A new visit that begins with these readings. Bus voltage and leads stay here: a visit has them proved again. */
export function StartVisit({ name, typed }: { name: string; typed: Typed }) {
  if (!stepsOfVisits.includes(name)) return null;
  const kept = Object.entries(typed).filter(([id]) => !trueOfTheMoment.includes(id));
  return (
    <p class="start-visit">
      <OpenFilled page="/visit/" calculator={name} form={Object.fromEntries(kept)}>
        Start a visit with these readings
      </OpenFilled>
    </p>
  );
}
