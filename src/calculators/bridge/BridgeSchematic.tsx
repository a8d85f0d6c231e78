import { formatReading } from '../../kernel/reading/format-reading.ts';
import { positionName } from './position-names.ts';
import type { Position, PositionState } from './positions.ts';

const stateWords: Record<PositionState, string> = {
  sound: 'sound',
  suspect: 'SUSPECT',
  unjudged: 'not judged',
  missing: 'no reading',
};

const legs = { U: 72, V: 186, W: 300 };
const railY = { plus: 30, minus: 334 };
const middle = 182;
const center = { plus: 96, minus: 268 };

interface Props {
  positions: readonly Position[];
  title?: string;
  caption?: string;
}

/** The output stage with each reading at the switch that it passes through. */
export function BridgeSchematic({
  positions,
  title = 'Output stage with your six readings',
  caption = 'Each reading stands at the transistor that it passes through.',
}: Props) {
  return (
    <figure class="live-figure">
      <svg
        class="live-drawing"
        viewBox="0 0 360 366"
        role="img"
        aria-labelledby="bridge-drawing-title bridge-drawing-text"
      >
        <title id="bridge-drawing-title">{title}</title>
        <desc id="bridge-drawing-text">{positions.map(inWords).join(' ')}</desc>
        <path class="rail" d={`M16 ${railY.plus}H344M16 ${railY.minus}H344`} />
        <text x="16" y={railY.plus - 9} class="strong">
          DC+
        </text>
        <text x="16" y={railY.minus + 22} class="strong">
          DC−
        </text>
        {positions.map((position) => (
          <Switch key={position.id} {...position} />
        ))}
        {Object.entries(legs).map(([phase, x]) => (
          <g key={phase}>
            <circle class="terminal" cx={x} cy={middle} r="14" />
            <text x={x} y={middle + 6} class="strong" text-anchor="middle">
              {phase}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

function inWords({ id, reading, state }: Position): string {
  return `${positionName(id)}: ${[formatReading(reading), stateWords[state]].filter(Boolean).join(', ')}.`;
}

/** A switch with the diode across it; line and sign of its frame show the state, and so do the words below. */
function Switch({ rail, phase, reading, state }: Position) {
  const x = legs[phase];
  const y = center[rail];
  const label = rail === 'plus' ? y + 44 : y - 52;
  return (
    <g data-state={state} data-position={`${rail}${phase}`}>
      <path class="wire" d={`M${x} ${railY[rail]}V${middle}`} />
      <path class="wire" d={`M${x} ${y - 32}h-28v64h28`} />
      <path class="diode" d={`M${x - 37} ${y + 8}h18l-9-16zM${x - 37} ${y - 8}h18`} />
      <rect class="switch" x={x - 17} y={y - 22} width="34" height="44" rx="3" />
      <path class="sign" d={signs[state](x, y)} />
      <rect class="label-ground" x={x - 54} y={label - 15} width="108" height="38" />
      <text x={x} y={label} text-anchor="middle" class="figures">
        {formatReading(reading) || '–'}
      </text>
      <text x={x} y={label + 18} text-anchor="middle" class={state === 'suspect' ? 'strong' : ''}>
        {stateWords[state]}
      </text>
    </g>
  );
}

const signs: Record<PositionState, (x: number, y: number) => string> = {
  sound: (x, y) => `M${x - 9} ${y}l6 8 12-16`,
  suspect: (x, y) => `M${x - 10} ${y - 12}l20 24M${x + 10} ${y - 12}l-20 24`,
  unjudged: (x, y) => `M${x - 9} ${y}h2M${x - 1} ${y}h2M${x + 7} ${y}h2`,
  missing: () => '',
};
