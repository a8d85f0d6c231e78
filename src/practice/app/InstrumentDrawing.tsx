import type { Mode } from '../simulator/measure.ts';
import { drawingTexts } from '../words/bench.ts';
import { sockets } from './drawing-layout.ts';
import { modes } from './meter-settings.ts';

/** The instrument with display, knob and two sockets, as chosen in the form below it. */
export function InstrumentDrawing({ mode, display }: { mode: Mode; display: string }) {
  const turned = -60 + 30 * modes.indexOf(mode);
  return (
    <svg class="instrument" role="img" aria-label={drawingTexts.display(display)}>
      <rect x="26" y="540" width="272" height="146" rx="14" class="body" />
      <rect x="40" y="552" width="244" height="52" rx="4" class="display" />
      <text x="274" y="588" text-anchor="end" class="reading">
        {display || '– – –'}
      </text>
      <text x="162" y="624" text-anchor="middle" class="function">
        {drawingTexts.knob[mode]}
      </text>
      <g transform={`rotate(${turned} 162 658)`} class="knob">
        <circle cx="162" cy="658" r="20" />
        <path d="M162 658V642" />
      </g>
      {(['red', 'black'] as const).map((lead) => (
        <circle key={lead} cx={sockets[lead].x} cy={sockets[lead].y} r="10" class={`socket ${lead}`} />
      ))}
    </svg>
  );
}
