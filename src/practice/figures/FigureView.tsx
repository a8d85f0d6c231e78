import { useEffect, useMemo, useState } from 'preact/hooks';
import { FigureControl } from './FigureControl.tsx';
import { FigureTable } from './FigureTable.tsx';
import { type Control, type SimulatedFigure, startOf, withStop } from './simulated-figure.ts';

/**
 * Drawing, controls, values and table of a figure. On the server and on paper: the drawing at its start and the table.
 * With script the controls work, and the table waits behind a button.
 */
export function FigureView<Result>({ figure }: { figure: SimulatedFigure<Result> }) {
  const { title, model, controls, Drawing, height } = figure;
  // An article may hold a drawing of the same name.
  const id = `simulated-${figure.id}`;
  const [settings, setSettings] = useState(() => startOf(figure));
  const [live, setLive] = useState(false);
  const [tableShown, setTableShown] = useState(false);
  useEffect(() => setLive(true), []);
  const result = useMemo(() => figure.compute(settings), [settings]);
  const values = figure.values(result);
  const says = figure.says(result);
  return (
    <>
      <svg
        class="simulated-drawing"
        viewBox={`0 0 360 ${height}`}
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-desc`}>{`${values.map(([name, text]) => `${name}: ${text}.`).join(' ')} ${says}`}</desc>
        <Drawing result={result} />
      </svg>
      <div class="figure-controls">
        {controls.map((control, place) => (
          <FigureControl
            key={control.id}
            figure={id}
            control={control}
            stop={settings[place] ?? 0}
            onMove={(stop) => setSettings((now) => withStop(now, place, stop))}
          />
        ))}
      </div>
      <p class="figure-settings">
        Drawn for: {controls.map((control, place) => settingText(control, settings[place])).join('; ')}.
      </p>
      <output class="figure-values">
        {values.map(([name, text]) => (
          <span class="figure-value" key={name}>
            <span>{name}</span> <b>{text}</b>
          </span>
        ))}
        <span class="figure-says">{says}</span>
      </output>
      <button
        type="button"
        class="plain figure-table-button"
        aria-expanded={tableShown}
        aria-controls={`${id}-table`}
        onClick={() => setTableShown(!tableShown)}
      >
        {tableShown ? 'Hide the table of values' : 'Show a table of values'}
      </button>
      <FigureTable figure={figure} id={`${id}-table`} look={tableLook(live, tableShown)} />
      <p class="figure-model">Model: {model} It is a model, not your drive.</p>
    </>
  );
}

function tableLook(live: boolean, shown: boolean): string {
  if (!live) return 'is-waiting';
  return shown ? '' : 'is-folded';
}

/** What a control stands at, where it can't be seen: on paper and without script. */
function settingText({ label, stops }: Control, stop = 0): string {
  return `${label}: ${stops[stop]}`;
}
