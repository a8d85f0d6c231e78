import { useContext } from 'preact/hooks';
import { useOpening } from '../../../ui/form/folded-parts.ts';
import type { StepId } from '../../steps/ids.ts';
import { photographTexts } from '../../words/photographs.ts';
import { PhotographItem } from './PhotographItem.tsx';
import { PhotographsContext } from './use-photographs.ts';

/** Photographs are asked for where something is looked at. */
const opensWith = (step: StepId) => step === 'inspect';

/** The photographs of a step, and two ways to attach one: by the camera, or from those that the device has. */
export function StepPhotographs({ step }: { step: StepId }) {
  const of = useContext(PhotographsContext);
  const own = of?.photographs.filter((one) => one.step === step) ?? [];
  const details = useOpening(own.length > 0 || opensWith(step));
  if (of === undefined) return null;
  const { working, trouble } = of;
  const take = (input: HTMLInputElement) => {
    of.attach(step, [...(input.files ?? [])]);
    // Allows choosing the same picture again.
    input.value = '';
  };
  return (
    <details class="more photographs" ref={details}>
      <summary>{photographTexts.summary(own.length)}</summary>
      <ul>
        {own.map((photograph, index) => (
          <PhotographItem
            key={photograph.id}
            photograph={photograph}
            number={index + 1}
            of={of}
            onRemove={() => {
              of.remove(photograph);
              details.current?.querySelector('summary')?.focus();
            }}
          />
        ))}
      </ul>
      <p class="hint">{photographTexts.hint(of.photographs.length)}</p>
      <p class="banner-actions">
        <label class="file-button">
          <input type="file" accept="image/*" capture="environment" onChange={(event) => take(event.currentTarget)} />
          Take a photograph
        </label>
        <label class="file-button">
          <input type="file" accept="image/*" multiple onChange={(event) => take(event.currentTarget)} />
          Choose pictures
        </label>
      </p>
      <p role="status" class="photograph-working">
        {working === step && photographTexts.working}
      </p>
      <div class="photograph-trouble" role="alert">
        {trouble && (trouble.step ?? step) === step && <p>{trouble.problem.message}</p>}
      </div>
      {own.some(({ id }) => of.unsaved.includes(id)) && (
        <p class="banner-actions">
          <button type="button" class="plain" onClick={() => of.retry()}>
            Try again to store
          </button>
        </p>
      )}
    </details>
  );
}
