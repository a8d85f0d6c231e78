import { useEffect, useMemo, useState } from 'preact/hooks';
import { isoTime, shownTime } from '../../kernel/time/iso-time.ts';
import { oneAtATime } from '../../ui/one-at-a-time.ts';
import { newVisit, type VisitDetails } from '../record/change-visit.ts';
import { mergedPhotographs } from '../record/photograph.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { deviceInstruments } from '../storage/device-instruments.ts';
import { newId } from '../storage/new-id.ts';
import type { Removed, VisitStore } from '../storage/visit-store.ts';
import { visitsLead } from '../words/visit.ts';
import { download } from './download.ts';
import { ImportVisit } from './ImportVisit.tsx';
import { listEntries, type VisitEntries } from './list-entries.ts';
import { holdPhotograph, releasePhotographs } from './photographs/held-photographs.ts';
import { wholeFile } from './photographs/whole-file.ts';
import { visitHash } from './route.ts';
import { holdUnsaved, pendingSaves, releaseUnsaved } from './unsaved-visits.ts';
import { visitTitle } from './visit-summary.ts';

/** The visits on this device. */
export function VisitList({ store }: { store: VisitStore }) {
  const [list, setList] = useState<VisitEntries>();
  const [deleted, setDeleted] = useState<Removed & { visit: VisitRecord }>();
  const [message, setMessage] = useState('');
  const show = async () => {
    await pendingSaves();
    setList(await listEntries(store));
  };
  useEffect(() => {
    void show();
    return store.listen(() => void show());
  }, []);

  const tap = useMemo(oneAtATime, []);
  const start = async (details: Partial<VisitDetails> = {}) => {
    const visit = newVisit(newId(), isoTime(new Date()), withInstruments(details));
    const result = await store.save(visit);
    // Without storage the visit still works, in this window only.
    if (!result.ok) holdUnsaved(visit);
    location.hash = visitHash(visit.id);
  };
  const remove = async (visit: VisitRecord, unsaved: boolean) => {
    if (unsaved) releaseUnsaved(visit.id);
    const result = await store.remove(visit.id);
    if (!result.ok && !unsaved) setMessage(result.problem.message);
    else {
      const held = releasePhotographs(visit.id);
      setDeleted({ visit, photographs: mergedPhotographs(result.ok ? result.value.photographs : [], held) });
      setMessage(`Deleted: ${visitTitle(visit)}.`);
    }
    await show();
  };
  const undo = async () => {
    if (deleted === undefined) return;
    const result = await store.restore(deleted.visit, deleted.photographs);
    if (!result.ok) {
      holdUnsaved(deleted.visit);
      for (const one of deleted.photographs) holdPhotograph(deleted.visit.id, one);
    }
    setMessage(result.ok ? `Put back: ${visitTitle(deleted.visit)}.` : result.problem.message);
    setDeleted(undefined);
    await show();
  };

  const exportWhole = async (visit: VisitRecord) => {
    const { file, problem } = await wholeFile(store, visit);
    download(file);
    if (problem !== undefined) setMessage(`The photographs are not in the file. ${problem.message}`);
  };

  return (
    <>
      <h1 tabIndex={-1}>Visits</h1>
      <p class="lead">{visitsLead}</p>
      <p class="banner-actions">
        <button type="button" class="primary" onClick={() => tap(() => start())}>
          Start a visit
        </button>
      </p>
      <p class="list-message" role="status">
        {message}{' '}
        {deleted && (
          <button type="button" class="plain" onClick={() => void undo()}>
            Undo
          </button>
        )}
      </p>
      <h2>On this device</h2>
      {list?.problem && <p role="alert">{list.problem.message}</p>}
      {list && list.entries.length === 0 && !list.problem && <p>No visits yet.</p>}
      <ul class="visit-list" data-ready={list && ''}>
        {list?.entries.map(({ visit, state, unsaved }) => (
          <li key={visit.id}>
            <a href={visitHash(visit.id)}>{visitTitle(visit)}</a>
            <p>
              {unsaved && <b>Not saved, only in this window. </b>}
              {visit.secondVersionOf !== undefined && <b>Second version, changed on another device. </b>}
              {state} <span class="when">Last change {shownTime(visit.changedAt)}.</span>
            </p>
            <p class="banner-actions">
              <button type="button" class="plain" onClick={() => tap(() => start(sameAxis(visit)))}>
                New visit here<span class="visually-hidden">: {visitTitle(visit)}</span>
              </button>
              <button type="button" class="plain" onClick={() => void exportWhole(visit)}>
                Export<span class="visually-hidden"> {visitTitle(visit)}</span>
              </button>
              <button type="button" class="plain" onClick={() => void remove(visit, unsaved)}>
                Delete<span class="visually-hidden"> {visitTitle(visit)}</span>
              </button>
            </p>
          </li>
        ))}
        {list?.unreadable.map(({ id, problem }) => (
          <Unreadable key={id} id={id} message={problem.message} store={store} onRemoved={() => void show()} />
        ))}
      </ul>
      <ImportVisit store={store} />
    </>
  );
}

/** What a new visit to the same axis takes over: what it is made of, and nothing that was measured. */
function sameAxis(visit: VisitRecord): Partial<VisitDetails> {
  const { machine, axis, axisId, drive, motor, cable, site, person, servedAxes, instruments } = visit;
  return {
    ...{ machine, axis, drive, motor, site, person, servedAxes, instruments },
    ...(axisId !== undefined && { axisId }),
    ...(cable !== undefined && { cable }),
  };
}

/** The instruments that were noted last on this device; those of an older visit only if there are none. */
function withInstruments(details: Partial<VisitDetails>): Partial<VisitDetails> {
  const instruments = deviceInstruments();
  return instruments.length === 0 ? details : { ...details, instruments };
}

interface UnreadableProps {
  id: string;
  message: string;
  store: VisitStore;
  onRemoved: () => void;
}

/** A stored visit that can't be read here: it can be exported as it is, and then deleted. */
function Unreadable({ id, message, store, onRemoved }: UnreadableProps) {
  const [out, setOut] = useState(false);
  const takeOut = async () => {
    const raw = await store.loadRaw(id);
    if (raw.ok) download({ name: `visit-${id}.json`, text: raw.value });
    setOut(raw.ok);
  };
  return (
    <li>
      <b>A visit that can’t be read here</b>
      <p>{message}</p>
      <p class="banner-actions">
        <button type="button" class="plain" onClick={() => void takeOut()}>
          Take it out as a file
        </button>
        {out && (
          <button type="button" class="plain" onClick={() => void store.remove(id).then(onRemoved)}>
            Delete it here
          </button>
        )}
      </p>
    </li>
  );
}
