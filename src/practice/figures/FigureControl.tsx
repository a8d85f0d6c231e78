import type { Control } from './simulated-figure.ts';

interface Props {
  /** What the ids of this figure begin with. */
  figure: string;
  control: Control;
  stop: number;
  onMove: (stop: number) => void;
}

/** A native slider or native radio buttons, so that keys, touch and screen readers work as everywhere. */
export function FigureControl({ figure, control, stop, onMove }: Props) {
  const { id, label, stops, as } = control;
  const name = `${figure}-${id}`;
  if (as === 'slider') {
    return (
      <div class="figure-slider">
        <label for={name}>{label}</label>
        <span class="figure-stop" aria-hidden="true">
          {stops[stop]}
        </span>
        <input
          id={name}
          type="range"
          min={0}
          max={stops.length - 1}
          step={1}
          value={stop}
          aria-valuetext={stops[stop]}
          onInput={({ currentTarget }) => onMove(Number(currentTarget.value))}
        />
      </div>
    );
  }
  return (
    <fieldset>
      <legend>{label}</legend>
      <div class="figure-choices">
        {stops.map((text, place) => (
          <label key={text}>
            <input type="radio" name={name} checked={place === stop} onChange={() => onMove(place)} />
            <span>{text}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
