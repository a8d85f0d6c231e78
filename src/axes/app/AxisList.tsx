import { useState } from 'preact/hooks';
import { exchangesOf, secondDrive } from '../history/changes.ts';
import { knownText, searched } from '../history/known.ts';
import type { Axis, Register } from '../history/register.ts';
import { axesTexts, axisTitle, countOf } from '../words/axis.ts';
import { axisHash, newHash } from './route.ts';
import type { OpenRegister } from './use-register.ts';

/** Rows drawn at once: a tablet draws hundreds slowly, and nobody reads them; the search finds the others. */
const rowsShown = 100;

interface Props {
  open: OpenRegister;
  register: Register;
}

/** Every machine and axis that a visit or a person has named. */
export function AxisList({ open, register }: Props) {
  const [query, setQuery] = useState('');
  const [all, setAll] = useState(false);
  const found = searched(register.axes, query);
  const shown = all ? found : found.slice(0, rowsShown);
  return (
    <>
      <h1 tabIndex={-1}>Axes</h1>
      <p class="lead">{axesTexts.lead}</p>
      <p class="banner-actions">
        <a class="button" href={newHash}>
          Note an axis
        </a>
      </p>
      <div class="field">
        <label for="axes-search">Search</label>
        <p class="hint" id="axes-search-hint">
          Machine, axis, plant, drive, motor, label, former names.
        </p>
        <input
          id="axes-search"
          type="text"
          autoCapitalize="off"
          spellcheck={false}
          aria-describedby="axes-search-hint"
          value={query}
          onInput={(event) => setQuery(event.currentTarget.value)}
        />
      </div>
      <p role="status" class="axes-count">
        {register.axes.length === 0
          ? axesTexts.none
          : query.trim() === ''
            ? countOf(register.axes.length, 'axis', 'axes')
            : `${found.length} of ${countOf(register.axes.length, 'axis', 'axes')}`}
      </p>
      {open.unreadable > 0 && <p>{axesTexts.unreadable(open.unreadable)}</p>}
      <ul class="axis-list" data-ready="">
        {shown.map((axis) => (
          <AxisRow key={axis.id} axis={axis} />
        ))}
      </ul>
      {shown.length < found.length && (
        <button type="button" class="plain" onClick={() => setAll(true)}>
          Show all {found.length}
        </button>
      )}
      {register.unnamed.length > 0 && <p>{axesTexts.unnamed(register.unnamed.length)}</p>}
    </>
  );
}

function AxisRow({ axis }: { axis: Axis }) {
  const [last] = axis.visits;
  const about = [knownText(axis, 'plant'), knownText(axis, 'motor')].filter(Boolean).join('. ');
  return (
    <li>
      <a href={axisHash(axis.id)}>{axisTitle(axis.names)}</a>
      <p>
        {about !== '' && `${about}. `}
        {last === undefined ? 'No visit yet.' : `${countOf(axis.visits.length, 'visit', 'visits')}, `}
        {last && <span class="when">last {last.at.slice(0, 10)}. </span>}
        {last?.decision?.headline}
        {secondDrive(exchangesOf(axis)) && <b> {axesTexts.secondDrive}</b>}
      </p>
    </li>
  );
}
