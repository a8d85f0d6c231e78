import { useEffect, useState } from 'preact/hooks';
import { exchangesOf, secondDrive } from '../history/changes.ts';
import type { Earlier } from '../history/earlier.ts';
import { knownOf, sistersOf } from '../history/known.ts';
import type { Axis, Register } from '../history/register.ts';
import type { AxisStore } from '../storage/axis-store.ts';
import { aliasTexts, axisTitle } from '../words/axis.ts';
import { secondDriveText } from '../words/falls.ts';
import { AxisNotesPart } from './AxisNotesPart.tsx';
import { AxisReadings } from './AxisReadings.tsx';
import { Exchanges } from './Exchanges.tsx';
import { MergeAxes } from './MergeAxes.tsx';
import { axisHash, killsDrivesHref, listHash } from './route.ts';
import { StartVisit } from './StartVisit.tsx';
import type { OpenRegister } from './use-register.ts';
import { VisitTable } from './VisitTable.tsx';

interface Props {
  axis: Axis;
  open: OpenRegister;
  register: Register;
  store: AxisStore;
}

/** Visits whose readings are read and drawn. */
const visitsShown = 60;

/** One axis over the years. */
export function AxisScreen({ axis, open, register, store }: Props) {
  const [earlier, setEarlier] = useState<Earlier[]>();
  const shown = axis.visits.slice(0, visitsShown);
  useEffect(() => {
    let current = true;
    void store.readings(shown.map(({ id }) => id)).then((read) => {
      if (!current || !read.ok) return;
      const sets = new Map(read.value.map((one) => [one.id, one.sets]));
      setEarlier(shown.map((visit) => ({ visit, sets: sets.get(visit.id) ?? [] })));
    });
    return () => {
      current = false;
    };
  }, [axis]);
  const exchanges = exchangesOf(axis);
  const drives = secondDrive(exchanges);
  const sisters = sistersOf(register.axes, axis);
  return (
    <>
      <p class="running-head">
        <a href={listHash}>All axes</a>
      </p>
      <h1 tabIndex={-1}>{axisTitle(axis.names)}</h1>
      {aliasTexts(axis) !== '' && <p class="hint">{aliasTexts(axis)}</p>}
      <StartVisit axis={axis} known={knownOf(axis)} />
      {drives && (
        <p class="axis-asks">
          {secondDriveText(drives.earlier.on, drives.later.on)}{' '}
          <a href={killsDrivesHref}>When the second drive fails too</a>.
        </p>
      )}
      <div class="axis-sides">
        <div>
          <VisitTable axis={axis} />
          {earlier === undefined ? (
            <p>Reading the readings …</p>
          ) : (
            <AxisReadings earlier={earlier} exchanges={exchanges} more={axis.visits.length - shown.length} />
          )}
        </div>
        <div>
          <Exchanges axis={axis} exchanges={exchanges} open={open} />
          {sisters.length > 0 && (
            <section aria-labelledby="sisters">
              <h2 id="sisters">Axes with the same motor</h2>
              <ul class="axis-sisters">
                {sisters.slice(0, 20).map((sister) => (
                  <li key={sister.id}>
                    <a href={axisHash(sister.id)}>{axisTitle(sister.names)}</a>
                  </li>
                ))}
              </ul>
            </section>
          )}
          <AxisNotesPart axis={axis} open={open} />
          <MergeAxes axis={axis} open={open} register={register} />
        </div>
      </div>
    </>
  );
}
