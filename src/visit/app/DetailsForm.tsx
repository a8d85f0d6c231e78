import { formProps } from '../../ui/form/form-props.ts';
import { useOpening } from '../../ui/form/use-opening.ts';
import { evaluate } from '../evaluate.ts';
import { changeDetails, type VisitDetails } from '../record/change-visit.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { DetailFields } from './DetailFields.tsx';
import { conditionFields, nameFields, plateFields } from './details-fields.ts';
import { Instruments } from './Instruments.tsx';
import { ServedAxes } from './ServedAxes.tsx';
import { TextInput } from './TextInput.tsx';
import { useDraft } from './use-draft.ts';
import type { VisitSession } from './use-session.ts';

interface Props {
  visit: VisitRecord;
  change: VisitSession['change'];
  draft: VisitSession['draft'];
}

/** Who and where, instruments, conditions, notes: everything that is no step. Folded, but for the name of a new visit. */
export function DetailsForm({ visit, change, draft }: Props) {
  const put = (details: Partial<VisitDetails>) =>
    change((before, now) => evaluate(changeDetails(before.visit, details, now), now, before));
  const typed = (details: Partial<VisitDetails>) => draft({ details });
  const { machine, axis, controllerMessage, drive, motor, site, person, conditions, notes } = visit;
  const name = useDraft({ machine, axis, controllerMessage }, typed, put);
  const more = useDraft({ drive, motor, site, person, conditions, notes }, typed, put);
  const setMore = (part: Partial<typeof more.value>) => more.set({ ...more.value, ...part });
  const isNew = axis === '' && visit.seq === 0;
  return (
    <form class="visit-details" {...formProps}>
      <details class="more" ref={useOpening(isNew)}>
        <summary>Machine, axis, message</summary>
        <DetailFields fields={nameFields} draft={name} />
      </details>
      <details class="more">
        <summary>Drive, motor, instruments, conditions, notes</summary>
        <DetailFields fields={plateFields} draft={more} />
        <ServedAxes
          rows={visit.servedAxes}
          onTyped={(servedAxes) => typed({ servedAxes })}
          onSettled={(servedAxes) => put({ servedAxes })}
        />
        <Instruments
          instruments={visit.instruments}
          onTyped={(instruments) => typed({ instruments })}
          onSettled={(instruments) => put({ instruments })}
        />
        <fieldset>
          <legend>Conditions</legend>
          {conditionFields.map(({ id, label, hint }) => (
            <TextInput
              key={id}
              id={`visit-${id}`}
              label={label}
              hint={hint}
              value={more.value.conditions[id]}
              onInput={(value) => setMore({ conditions: { ...more.value.conditions, [id]: value } })}
              onLeave={more.leave}
            />
          ))}
        </fieldset>
        <TextInput
          id="visit-notes"
          label="Notes"
          long
          value={more.value.notes}
          onInput={(value) => setMore({ notes: value })}
          onLeave={more.leave}
        />
      </details>
    </form>
  );
}
