import type { ReadForm } from '../../kernel/form/read-form.ts';
import { formatQuantity, formatRounded } from '../../kernel/reading/format-reading.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { Band } from '../../ui/plot/Band.tsx';
import { Curve } from '../../ui/plot/Curve.tsx';
import { decadesAround, spanOf } from '../../ui/plot/domain.ts';
import { plotFrame } from '../../ui/plot/frame.ts';
import { Plot } from '../../ui/plot/Plot.tsx';
import { Points } from '../../ui/plot/Points.tsx';
import type { Pair } from '../../ui/plot/place-pairs.ts';
import { insulationInput } from './form.ts';
import { formulaText } from './formula.ts';
import { type PlotData, plotData } from './plot-data.ts';
import type { InsulationInput } from './rule/input.ts';

/** Of a form as it was judged. */
export function JudgedInsulationPlot({ read }: { read: ReadForm }) {
  return <InsulationPlot input={insulationInput(read)} />;
}

/** The limit and the readings against winding temperature. Between the two limits nothing is decided. */
export function InsulationPlot({ input }: { input: InsulationInput }) {
  const data = plotData(input);
  if (data === undefined) return null;
  const { curve, marks } = data;
  const goFrom = curve.map((at): Pair => [at.temperature, at.goFrom]);
  const noGoBelow = curve.map((at): Pair => [at.temperature, at.noGoBelow]);
  const frame = plotFrame(
    {
      kind: 'linear',
      domain: spanOf([...curve, ...marks].map(({ temperature }) => temperature)),
      label: 'winding temperature, °C',
      format: String,
    },
    {
      kind: 'log10',
      domain: decadesAround([...[...goFrom, ...noGoBelow].map(([, ohms]) => ohms), ...marks.map(({ ohms }) => ohms)]),
      label: 'reading',
      format: (ohms) => formatQuantity(ohms, 'Ω'),
    },
  );
  const formula = formulaText(input);
  return (
    <Plot
      id="insulation-plot"
      title="Limit and readings against winding temperature"
      desc={inWords(data)}
      frame={frame}
      caption={
        <>
          Above the lines: go. Below them: no-go. Between them, nothing is decided.
          {marks.length === 0 && ' Readings appear once the winding temperature is known.'}
          {formula && <p class="formula">{formula}</p>}
        </>
      }
      table={{ summary: 'The limits as a table', head: ['Winding', 'Go from', 'No-go below'], rows: limitRows(data) }}
    >
      <Band frame={frame} upper={goFrom} lower={noGoBelow} />
      <Curve frame={frame} points={goFrom} look="limit" />
      <Curve frame={frame} points={noGoBelow} look="limit" />
      <Points
        frame={frame}
        points={marks.map(({ label, temperature, ohms, shape }, index) => ({
          x: temperature,
          y: ohms,
          shape,
          text: label,
          place: index,
        }))}
      />
    </Plot>
  );
}

function limitRows({ curve }: PlotData): string[][] {
  return curve
    .filter(({ temperature }) => temperature % 10 === 0)
    .map(({ temperature, goFrom, noGoBelow }) => [
      formatRounded(temperature, '°C'),
      formatRounded(goFrom, 'Ω'),
      formatRounded(noGoBelow, 'Ω'),
    ]);
}

function inWords({ curve, marks }: PlotData): string {
  const ends = [curve[0], lastIn(curve)].flatMap((one) => one ?? []);
  const limits = ends.map(
    ({ temperature, goFrom, noGoBelow }) =>
      `At ${formatRounded(temperature, '°C')}: go from ${formatRounded(goFrom, 'Ω')}, no-go below ${formatRounded(noGoBelow, 'Ω')}.`,
  );
  const readings = marks.map(({ label, ohms, shape, temperature }) => {
    const bound = shape === 'above' ? 'at least ' : shape === 'below' ? 'at most ' : '';
    return `${label} reads ${bound}${formatRounded(ohms, 'Ω')} at ${formatRounded(temperature, '°C')}.`;
  });
  return [...limits, ...readings].join(' ');
}
