import type { Terminal } from '../case/terminals.ts';
import { terminalName } from '../words/acts.ts';
import { columnX, rowY, terminalRadius } from './drawing-layout.ts';
import type { Lead, Placed } from './meter-settings.ts';

interface Props {
  terminal: Terminal;
  placed: Placed;
  next: Lead;
  onPlace: (node: string) => void;
}

/** A terminal that takes the next lead, by touch or keyboard. */
export function TerminalButton({ terminal, placed, next, onPlace }: Props) {
  const { node, row, column } = terminal;
  const [x, y] = [columnX(column), rowY(row)];
  const name = shortName(node);
  const lead = placed.red === node ? 'red' : placed.black === node ? 'black' : undefined;
  const label = `${terminalName(node)}${lead ? `, ${lead} lead is here` : ''}. Put the ${next} lead here`;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onPlace(node);
  };
  return (
    // An SVG has no button of its own.
    // biome-ignore lint/a11y/useSemanticElements: see above
    <g
      role="button"
      tabindex={0}
      class="terminal"
      data-node={node}
      data-lead={lead}
      aria-label={label}
      onClick={() => onPlace(node)}
      onKeyDown={onKeyDown}
    >
      <circle cx={x} cy={y} r={terminalRadius} class="target" />
      <circle cx={x} cy={y} r={19} class="screw" />
      <text x={x} y={y + 5} text-anchor="middle" class={name.length > 4 ? 'long' : undefined}>
        {name}
      </text>
    </g>
  );
}

/** The label of the terminal. It is also part of the name that is read aloud. */
function shortName(node: string): string {
  if (node === 'ground') return 'PE';
  if (node === 'DC-') return 'DC−';
  return node.slice(node.lastIndexOf('.') + 1);
}
