import type { ReadForm } from '../../kernel/form/read-form.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { Band } from '../../ui/plot/Band.tsx';
import { Curve } from '../../ui/plot/Curve.tsx';
import { decadesAround } from '../../ui/plot/domain.ts';
import { plotFrame } from '../../ui/plot/frame.ts';
import { LimitLine } from '../../ui/plot/LimitLine.tsx';
import { Plot } from '../../ui/plot/Plot.tsx';
import { Points } from '../../ui/plot/Points.tsx';
import { cableLengthInput } from './form.ts';
import { lengthPlotData } from './length-plot-data.ts';
import type { CableLengthInput } from './rule/input.ts';

/** Of a form as it was judged. */
export function JudgedLengthPlot({ read }: { read: ReadForm }) {
  return <LengthPlot input={cableLengthInput(read)} />;
}

/**
 * The least resistance of a new cable of this construction over its length, with the after-trip limit and the
 * reading.
 */
export function LengthPlot({ input }: { input: CableLengthInput }) {
  const data = lengthPlotData(input);
  if (data === undefined) return null;
  const { least, most, point, taken, rows } = data;
  const ohms = [...least, ...most].map(([, value]) => value);
  const frame = plotFrame(
    {
      kind: 'log10',
      domain: [least[0]?.[0] ?? 1, lastIn(least)?.[0] ?? 10],
      label: 'length of the run',
      format: (metres) => formatRounded(metres, 'm'),
      ticks: [0, 3, 6].flatMap((index) => least[index]?.[0] ?? []),
    },
    {
      kind: 'log10',
      domain: decadesAround([...ohms, point, ...(taken ? [taken[1]] : [])]),
      label: 'one core to all else',
      format: (value) => formatRounded(value, 'Ω'),
    },
    // Room for the last length label in the corner.
    { right: 330 },
  );
  return (
    <Plot
      id="cable-length-plot"
      title="Insulation resistance over the length of the run"
      desc={`What a new cable of this build has at least falls with its length. ${rows.map(([length, low]) => `${length}: ${low}`).join('; ')}.`}
      frame={frame}
      caption="Shaded: the least value of a new cable, from the lowest to the highest constant, at the temperature of the tables. Dot: your reading as it was taken."
      table={{
        summary: 'The curve as a table',
        head: ['Length', 'New cable, lowest constant', 'New cable, highest constant'],
        rows,
      }}
    >
      <Band frame={frame} upper={most} lower={least} look="spread" />
      <Curve frame={frame} points={least} />
      <Curve frame={frame} points={most} look="dashed" />
      <LimitLine frame={frame} at={point} text={`${formatRounded(point, 'Ω')} after a trip`} />
      {taken && <Points frame={frame} points={[{ x: taken[0], y: taken[1], shape: 'dot' }]} />}
    </Plot>
  );
}
