import type { Shorted } from './model.ts';

const loops = 9;
const step = 30;
const start = 44;
const y = 96;
const turn = `c0 -56 ${step} -56 ${step} 0`;

/** Winding U as turns in a row; the shorted ones are heavy and closed below. Bars: resistance and ring by their size. */
export function TurnsDrawing({ result }: { result: Shorted }) {
  const { turns, unbalancePercent, henries, ring } = result;
  const drawn = turns === 0 ? 0 : Math.min(loops - 2, Math.ceil(turns / 6));
  const ringFrom = start + 3 * step;
  const loss = 100 * (1 - henries.bad / henries.sound);
  const bars = [
    { name: 'resistance differs', share: unbalancePercent / 20, text: `${unbalancePercent.toFixed(1)} %` },
    { name: 'inductance lower', share: loss / 20, text: `${loss.toFixed(1)} %` },
    { name: 'current in the ring', share: ring.amperes / 60, text: `${ring.amperes.toFixed(0)} A` },
  ];
  return (
    <>
      <path class="line" d={`M20 ${y}H${start}${turn.repeat(loops)}h20`} />
      <circle class="line paper" cx="20" cy={y} r="7" />
      <text class="strong" x="20" y={y - 16} text-anchor="middle">
        U
      </text>
      <text x="348" y={y + 26} text-anchor="end">
        star
      </text>
      {drawn > 0 && (
        <>
          <path class="line marked" d={`M${ringFrom} ${y}${turn.repeat(drawn)}`} />
          <path class="line marked" d={`M${ringFrom} ${y}q${(drawn * step) / 2} 44 ${drawn * step} 0`} />
        </>
      )}
      <text x={start} y={y + 50}>
        {turns === 0 ? 'no turn shorted' : `${turns} shorted: a closed ring`}
      </text>
      {bars.map(({ name, share, text }, index) => (
        <g key={name}>
          <text x="10" y={190 + index * 50}>
            {name} <tspan class="figures strong">{text}</tspan>
          </text>
          <rect class="line" x="10" y={198 + index * 50} width="340" height="16" />
          <rect class="ink" x="10" y={198 + index * 50} width={(340 * Math.min(1, share)).toFixed(1)} height="16" />
        </g>
      ))}
    </>
  );
}
