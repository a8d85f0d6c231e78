import type { ReadForm } from '../../kernel/form/read-form.ts';
import { formatReading, formatRounded } from '../../kernel/reading/format-reading.ts';
import { type Bar, windingBars } from './bars.ts';
import { pairNames } from './pair-names.ts';

const middle = 218;
const halfWidth = 110;
const rowHeight = 56;
const top = 34;

/** Each reading as its distance from the mean of the three, with the limits on both sides. */
export function WindingBars({ read }: { read: ReadForm }) {
  const data = windingBars(read);
  if (data === undefined) return null;
  const { bars, good, bad } = data;
  const bottom = top + bars.length * rowHeight;
  // The edge of the drawing is twice the limit that fails; a larger deviation ends there and shows its figure.
  const x = (percent: number) => middle + (Math.max(-2 * bad, Math.min(2 * bad, percent)) / (2 * bad)) * halfWidth;
  return (
    <figure class="live-figure">
      <svg
        class="live-drawing"
        viewBox={`0 0 360 ${bottom + 30}`}
        role="img"
        aria-labelledby="winding-drawing-title winding-drawing-text"
      >
        <title id="winding-drawing-title">Deviation of each reading from the mean</title>
        <desc id="winding-drawing-text">{bars.map(inWords).join(' ')}</desc>
        {[-1, 1].map((side) => (
          <rect
            key={side}
            class="undecided-area"
            x={Math.min(x(side * good), x(side * bad))}
            y={top - 8}
            width={Math.abs(x(bad) - x(good))}
            height={bottom - top + 8}
          />
        ))}
        {[-bad, -good, good, bad].map((limit) => (
          <path key={limit} class="limit-line" d={`M${x(limit)} ${top - 8}V${bottom}`} />
        ))}
        <path class="wire" d={`M${middle} ${top - 8}V${bottom}`} />
        <text x={middle} y="18" text-anchor="middle">
          mean
        </text>
        <text x={x(bad)} y={bottom + 20} text-anchor="middle">
          {formatRounded(bad, '%')}
        </text>
        <text x={x(-bad)} y={bottom + 20} text-anchor="middle">
          −{formatRounded(bad, '%')}
        </text>
        {bars.map((bar, index) => (
          <g key={bar.pair} data-pair={bar.pair}>
            <text class="strong" x="6" y={top + index * rowHeight + 16}>
              {pairNames[bar.pair]}
            </text>
            <text class="figures" x="6" y={top + index * rowHeight + 36}>
              {formatReading(bar.reading)}
            </text>
            <path class="rail" d={`M${middle} ${top + index * rowHeight + 20}H${x(bar.deviation)}`} />
            <circle class="mark" cx={x(bar.deviation)} cy={top + index * rowHeight + 20} r="8" />
            <text class="halo" x={x(bar.deviation)} y={top + index * rowHeight + 46} text-anchor="middle">
              {signed(bar.deviation)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        Distance of each reading from the mean. Up to {formatRounded(good, '%')} passes, above {formatRounded(bad, '%')}{' '}
        fails, between the two nothing is decided.
      </figcaption>
    </figure>
  );
}

function inWords({ pair, reading, deviation }: Bar): string {
  return `${pairNames[pair]}: ${formatReading(reading)}, ${signed(deviation)} from the mean.`;
}

function signed(percent: number): string {
  const size = `${Math.abs(percent).toFixed(1)} %`;
  return percent < 0 ? `−${size}` : `+${size}`;
}
