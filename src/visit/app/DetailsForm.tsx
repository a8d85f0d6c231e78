import { useOpening } from '../../ui/form/folded-parts.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import { useEntries } from '../../ui/form/use-entries.ts';
import { evaluate } from '../evaluate.ts';
import { changeDetails, type VisitDetails } from '../record/change-visit.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { DetailFields } from './DetailFields.tsx';
import { conditionFields, nameFields, plateFields } from './details-fields.ts';
import { Instruments } from './Instruments.tsx';
import { KnownAxes } from './KnownAxes.tsx';
import { ServedAxes } from './ServedAxes.tsx';
import { TextInput } from './TextInput.tsx';
import type { VisitSession } from './use-session.ts';

interface Props {
  visit: VisitRecord;
  change: VisitSession['change'];
  draft: VisitSession['draft'];
}

/** Who and where, conditions, notes, and the instruments: everything that is no step. Folded, but for the name of a new visit. */
export function DetailsForm({ visit, change, draft }: Props) {
  const onSettled = (details: Partial<VisitDetails>) =>
    change((before, now) => evaluate(changeDetails(before.visit, details, now), now, before));
  const onTyped = (details: Partial<VisitDetails>) => draft({ details });
  const { machine, axis, controllerMessage, drive, motor, site, person, conditions, notes } = visit;
  const name = useEntries({ start: { machine, axis, controllerMessage }, onTyped, onSettled });
  const more = useEntries({ start: { drive, motor, site, person, conditions, notes }, onTyped, onSettled });
  const typeMore = (part: (before: typeof more.typed) => Partial<typeof more.typed>) =>
    more.type((before) => ({ ...before, ...part(before) }));
  const isNew = axis === '' && visit.seq === 0;
  return (
    <>
      <form class="visit-details" {...formProps}>
        <details class="more" ref={useOpening(isNew)}>
          <summary>Machine, axis, message</summary>
          {visit.seq === 0 && (
            <KnownAxes
              typed={name.typed}
              onTake={(names) => void name.replace((before) => ({ ...before, ...names }))}
            />
          )}
          <DetailFields fields={nameFields} entries={name} />
        </details>
        <details class="more">
          <summary>Drive, motor, conditions, notes</summary>
          <DetailFields fields={plateFields} entries={more} />
          <ServedAxes
            rows={visit.servedAxes}
            onTyped={(servedAxes) => onTyped({ servedAxes })}
            onSettled={(servedAxes) => onSettled({ servedAxes })}
          />
          <fieldset>
            <legend>Conditions</legend>
            {conditionFields.map(({ id, label, hint }) => (
              <TextInput
                key={id}
                id={`visit-${id}`}
                label={label}
                hint={hint}
                value={more.typed.conditions[id]}
                onInput={(value) => typeMore(({ conditions: before }) => ({ conditions: { ...before, [id]: value } }))}
                onLeave={more.leave}
              />
            ))}
          </fieldset>
          <TextInput
            id="visit-notes"
            label="Notes"
            long
            value={more.typed.notes}
            onInput={(value) => typeMore(() => ({ notes: value }))}
            onLeave={more.leave}
          />
        </details>
      </form>
      <Instruments
        instruments={visit.instruments}
        isNew={visit.seq === 0}
        onTyped={(instruments) => onTyped({ instruments })}
        onSettled={(instruments) => onSettled({ instruments })}
      />
    </>
  );
}
