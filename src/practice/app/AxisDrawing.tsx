import type { Machine } from '../case/machine.ts';
import { conductors } from '../case/terminals.ts';
import { drawingTexts } from '../words/bench.ts';
import { columnX, rowY, terminalRadius } from './drawing-layout.ts';

/** Drive, cable and motor, one column for each conductor; a conductor that is off has a gap. */
export function AxisDrawing({ machine }: { machine: Machine }) {
  const { state, axis } = machine;
  const plugged = state.motorEnd.U;
  return (
    <svg class="axis-drawing" role="img" aria-label={drawingTexts.whole(machine)}>
      <rect x="2" y="4" width="320" height="176" rx="6" class="part" />
      <text x="12" y="28" class="part-name">
        {drawingTexts.drive}
      </text>
      {drawingTexts.state(machine).map((line, position) => (
        <text key={line} x="312" y={28 + 24 * position} class="part-note" text-anchor="end">
          {line}
        </text>
      ))}
      <path d={`M${columnX(3)} ${rowY('drive')}H${columnX(4)}`} class="bar" />
      {conductors.map((core, column) => (
        <Joint key={core} x={columnX(column)} from={rowY('drive')} to={rowY('drive-end')} on={state.driveEnd[core]} />
      ))}
      <rect
        x="8"
        y={rowY('drive-end') + 28}
        width="308"
        height={rowY('motor-end') - rowY('drive-end') - 56}
        rx="12"
        class="part"
      />
      {conductors.map((name, column) => (
        <g key={name}>
          <path d={`M${columnX(column)} ${rowY('drive-end')}V${rowY('motor-end')}`} class="conductor" />
          <text
            x={columnX(column)}
            y={(rowY('drive-end') + rowY('motor-end')) / 2 + 5}
            class="core-name"
            text-anchor="middle"
          >
            {name}
          </text>
        </g>
      ))}
      <rect x="2" y={rowY('motor') - 34} width="320" height="96" rx="6" class="part" />
      {conductors.map((core, column) => (
        <Joint key={core} x={columnX(column)} from={rowY('motor-end')} to={rowY('motor')} on={plugged} />
      ))}
      <text x="12" y={rowY('motor') + 52} class="part-name">
        {drawingTexts.motor}
      </text>
      <text x="312" y={rowY('motor') + 52} class="part-note" text-anchor="end">
        {plugged ? drawingTexts.plugged : drawingTexts.unplugged}
      </text>
      <text x="162" y={rowY('motor') + 86} class="part-note" text-anchor="middle">
        {drawingTexts.cable(axis.parameters.cableMetres)}
      </text>
      {state.jumpers.length > 0 && (
        <text x="162" y={rowY('drive-end') - 34} class="part-note" text-anchor="middle">
          {drawingTexts.bonded}
        </text>
      )}
    </svg>
  );
}

function Joint({ x, from, to, on }: { x: number; from: number; to: number; on: boolean }) {
  if (on) return <path d={`M${x} ${from}V${to}`} class="conductor" />;
  const [top, bottom] = [from + terminalRadius, to - terminalRadius];
  return <path d={`M${x} ${top}v8M${x} ${bottom}v-8m-7 0h14M${x - 7} ${top + 8}h14`} class="conductor open" />;
}
