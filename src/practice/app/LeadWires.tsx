import type { Terminal } from '../case/terminals.ts';
import { drawingTexts } from '../words/bench.ts';
import { columnX, rowY, sockets } from './drawing-layout.ts';

/** The two leads from the instrument to their terminals; they differ in pattern and letter as well as in colour. */
export function LeadWires({ red, black }: { red: Terminal | undefined; black: Terminal | undefined }) {
  return (
    <svg class="lead-wires" role="img" aria-label={drawingTexts.leads}>
      {black && <Wire lead="black" to={black} letter="B" />}
      {red && <Wire lead="red" to={red} letter="R" />}
    </svg>
  );
}

function Wire({ lead, to, letter }: { lead: 'red' | 'black'; to: Terminal; letter: string }) {
  const from = sockets[lead];
  // Beside the screw, so that its name stays visible.
  const side = lead === 'red' ? -1 : 1;
  const [x, y] = [columnX(to.column) + side * 15, rowY(to.row) + 15];
  const edge = lead === 'red' ? 4 : 320;
  const path = `M${from.x} ${from.y}C${edge} ${from.y - 60} ${edge} ${y + 60} ${x} ${y}`;
  return (
    <g class={`wire ${lead}`}>
      <path d={path} class="halo" />
      <path d={path} class="core" />
      <circle cx={x} cy={y} r="9" class="tip" />
      <text x={x} y={y + 4.5} text-anchor="middle">
        {letter}
      </text>
    </g>
  );
}
