import { formatQuantity, formatRounded, type InsulationInput } from '../../calc/index.ts';
import { lastIn } from '../../calc/last-in.ts';
import { linear, logarithmic, pathThrough, steps } from '../../figures/scale.ts';
import { formulaText } from './formula.ts';
import { LimitTable } from './LimitTable.tsx';
import { PlotMark } from './PlotMark.tsx';
import { type PlotData, plotData } from './plot-data.ts';

const box = { left: 78, right: 340, top: 30, bottom: 300 };

/** The limit and the readings against winding temperature. Between the two limits nothing is decided. */
export function InsulationPlot({ input }: { input: InsulationInput }) {
  const data = plotData(input);
  if (data === undefined) return null;
  const formula = formulaText(input);
  const { curve, marks, temperatures, ohms } = data;
  const x = linear(temperatures, [box.left, box.right]);
  const y = logarithmic(ohms, [box.bottom, box.top]);
  const go = curve.map(({ temperature, goFrom }) => [x(temperature), y(goFrom)] as const);
  const noGo = curve.map(({ temperature, noGoBelow }) => [x(temperature), y(noGoBelow)] as const);
  const decades = steps([Math.log10(ohms[0]), Math.log10(ohms[1])], 1).map((exponent) => 10 ** Math.round(exponent));
  const tens = steps([Math.ceil(temperatures[0] / 20) * 20, temperatures[1]], 20);
  return (
    <figure class="live-figure">
      <svg
        class="live-drawing"
        viewBox="0 0 360 352"
        role="img"
        aria-labelledby="insulation-plot-title insulation-plot-text"
      >
        <title id="insulation-plot-title">Limit and readings against winding temperature</title>
        <desc id="insulation-plot-text">{inWords(data)}</desc>
        {decades.map((at) => (
          <g key={at}>
            <path class="grid" d={`M${box.left} ${y(at)}H${box.right}`} />
            <text x={box.left - 8} y={y(at) + 5} text-anchor="end" class="figures">
              {formatQuantity(at, 'Ω')}
            </text>
          </g>
        ))}
        {tens.map((at) => (
          <g key={at}>
            <path class="grid" d={`M${x(at)} ${box.top}V${box.bottom}`} />
            <text x={x(at)} y={box.bottom + 20} text-anchor="middle" class="figures">
              {at}
            </text>
          </g>
        ))}
        <path class="undecided-area" d={`${pathThrough([...go, ...[...noGo].reverse()])}Z`} />
        <path class="limit-line" d={pathThrough(go)} />
        <path class="limit-line" d={pathThrough(noGo)} />
        {marks.map((mark, index) => (
          <PlotMark
            key={mark.label}
            mark={mark}
            x={x(mark.temperature)}
            y={y(mark.ohms)}
            place={index}
            right={box.right}
          />
        ))}
        <text x={box.left} y="16">
          reading
        </text>
        <text x={box.right} y={box.bottom + 44} text-anchor="end">
          winding temperature, °C
        </text>
      </svg>
      <figcaption>
        {marks.length === 0
          ? 'Above the lines: go. Below them: no-go. Between them, nothing is decided. Readings appear once the winding temperature is known.'
          : 'Above the lines: go. Below them: no-go. Between them, nothing is decided.'}
      </figcaption>
      {formula && <p class="formula">{formula}</p>}
      <LimitTable data={data} />
    </figure>
  );
}

function inWords({ curve, marks }: PlotData): string {
  const ends = [curve[0], lastIn(curve)].flatMap((one) => one ?? []);
  const limits = ends.map(
    ({ temperature, goFrom, noGoBelow }) =>
      `At ${formatRounded(temperature, '°C')}: go from ${formatRounded(goFrom, 'Ω')}, no-go below ${formatRounded(noGoBelow, 'Ω')}.`,
  );
  const bounds = { above: 'at least ', below: 'at most ' };
  const readings = marks.map(({ label, ohms, bound, temperature }) => {
    const value = `${bound ? bounds[bound] : ''}${formatRounded(ohms, 'Ω')}`;
    return `${label} reads ${value} at ${formatRounded(temperature, '°C')}.`;
  });
  return [...limits, ...readings].join(' ');
}
