import { useEffect, useMemo, useState } from 'preact/hooks';
import type { CalculatorEntries } from '../../calculators/frame/calculator-link.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { href } from '../../ui/href.ts';
import { oneAtATime } from '../../ui/one-at-a-time.ts';
import { newVisit } from '../record/change-visit.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { stepsFor, takenAlong, withReadings } from '../start-with-readings.ts';
import { stepCalculators } from '../steps/calculators.ts';
import { type MeasuredStepId, questions } from '../steps/questions.ts';
import { newId } from '../storage/new-id.ts';
import type { VisitStore } from '../storage/visit-store.ts';
import { visitHash } from './route.ts';
import { holdUnsaved } from './unsaved-visits.ts';
import { visitProgress, visitTitle } from './visit-summary.ts';

interface Props {
  entries: CalculatorEntries;
  share: string;
  store: VisitStore;
}

/** Shows the readings of a calculator, and begins a visit with them if the person wants. */
export function SharedReadings({ entries: { calculator, form }, share, store }: Props) {
  const steps = stepsFor(calculator);
  const [first] = steps;
  const [begun, setBegun] = useState<VisitRecord[]>([]);
  useEffect(() => {
    if (first !== undefined) void openVisits(store).then(setBegun);
  }, []);
  const tap = useMemo(oneAtATime, []);
  const put = async (visit: VisitRecord, id: MeasuredStepId) => {
    const filled = withReadings(visit, id, form, isoTime(new Date()));
    const result = await store.save(filled);
    // Without storage the visit still works, in this window only.
    if (!result.ok) holdUnsaved(filled);
    location.replace(visitHash(filled.id));
  };
  const open = (
    <a class="button" href={`${href(`/calculators/${calculator}/`)}#share=${share}`}>
      Open the calculator
    </a>
  );
  if (first === undefined) {
    return (
      <>
        <h1 tabIndex={-1}>A filled calculator from a link</h1>
        <p>This link fills a calculator, not a visit.</p>
        <p>{open}</p>
      </>
    );
  }
  const taken = takenAlong(first, form);
  return (
    <>
      <h1 tabIndex={-1}>Readings from a calculator</h1>
      <p>Nothing is stored yet. Check the readings before you act on them: somebody typed them.</p>
      <ul>
        {stepCalculators[first].fields
          .filter(({ id }) => taken[id] !== undefined)
          .map((field) => (
            <li key={field.id}>
              {field.name}: <b>{shown(field, taken[field.id] ?? '')}</b>
            </li>
          ))}
      </ul>
      <p>
        A new visit keeps them in its step. It begins with the machine, and has lockout, bus voltage and motor leads
        proved by steps of its own: nothing here counts for them. When the way comes to the readings, it asks whether
        they still hold.
      </p>
      <p class="banner-actions">
        {steps.map((id, index) => (
          <button
            key={id}
            type="button"
            class={index === 0 ? 'primary' : 'plain'}
            onClick={() => tap(() => put(newVisit(newId(), isoTime(new Date())), id))}
          >
            Start a visit: {questions[id].title}
          </button>
        ))}
        {open}
      </p>
      {begun.some((visit) => steps.some((id) => isFree(visit, id))) && <h2>Or put them into a visit that is begun</h2>}
      <ul class="visit-list">
        {begun.flatMap((visit) =>
          steps
            .filter((id) => isFree(visit, id))
            .map((id) => (
              <li key={visit.id + id}>
                <button type="button" class="plain" onClick={() => tap(() => put(visit, id))}>
                  {visitTitle(visit)}: {questions[id].title}
                </button>
                <p>{visitProgress(visit)}.</p>
              </li>
            )),
        )}
      </ul>
    </>
  );
}

/** Nothing that was entered in a visit is ever replaced. */
const isFree = (visit: VisitRecord, id: MeasuredStepId) => visit.steps[id] === undefined;

/** The newest visits on this device that have no decision yet. */
async function openVisits(store: VisitStore): Promise<VisitRecord[]> {
  const stored = await store.list();
  if (!stored.ok) return [];
  const open = stored.value.visits.filter(({ decision }) => decision === undefined).slice(0, 5);
  const loaded = await Promise.all(open.map(({ id }) => store.load(id)));
  return loaded.flatMap((result) => (result.ok ? [result.value] : []));
}

type Field = (typeof stepCalculators)[MeasuredStepId]['fields'][number];

/** An answer by its label, a reading as it was typed. */
function shown(field: Field, value: string): string {
  const label = field.kind === 'choice' && field.options.find((option) => option.value === value)?.label;
  return label || value;
}
