import type { Frame } from './frame.ts';

/** Grid lines with their figures, the two axes and their names, for plots and for figures in articles. */
export function Axes({ frame: { x, y, box } }: { frame: Frame }) {
  return (
    <g>
      {y.ticks.map(({ at, text }) => (
        <g key={text}>
          <path class="grid" d={`M${box.left} ${at.toFixed(1)}H${box.right}`} />
          <text class="figures" x={box.left - 8} y={(at + 5).toFixed(1)} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
      {x.ticks.map(({ at, text }) => (
        <g key={text}>
          <path class="grid" d={`M${at.toFixed(1)} ${box.top}V${box.bottom}`} />
          <text class="figures" x={at.toFixed(1)} y={box.bottom + 20} text-anchor="middle">
            {text}
          </text>
        </g>
      ))}
      <path class="axis" d={`M${box.left} ${box.top}V${box.bottom}H${box.right}`} />
      <text x="4" y={box.top - 16}>
        {y.label}
      </text>
      <text x={box.right} y={box.bottom + 44} text-anchor="end">
        {x.label}
      </text>
    </g>
  );
}
