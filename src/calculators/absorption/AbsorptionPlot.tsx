import type { ReadForm } from '../../kernel/form/read-form.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { Curve } from '../../ui/plot/Curve.tsx';
import { decadesAround } from '../../ui/plot/domain.ts';
import { plotFrame } from '../../ui/plot/frame.ts';
import { LimitLine } from '../../ui/plot/LimitLine.tsx';
import { Plot } from '../../ui/plot/Plot.tsx';
import { Points } from '../../ui/plot/Points.tsx';
import { curveData } from './curve-data.ts';
import { absorptionInput } from './form.ts';
import { type AbsorptionInput, absorptionTimes } from './rule/input.ts';
import { markName } from './stopwatch.ts';

/** Of a form as it was judged. */
export function JudgedAbsorptionPlot({ read }: { read: ReadForm }) {
  return <AbsorptionPlot input={absorptionInput(read)} />;
}

/**
 * The readings over time, both on logarithmic axes: there, absorption of sound insulation is nearly a straight line.
 */
export function AbsorptionPlot({ input }: { input: AbsorptionInput }) {
  const data = curveData(input);
  if (data === undefined) return null;
  const { curve, points, marks, rows } = data;
  const [first, last] = [absorptionTimes[0] ?? 1, lastIn(absorptionTimes) ?? 10];
  const frame = plotFrame(
    {
      kind: 'log10',
      domain: [first * 0.8, last * 1.2],
      label: 'since the voltage was applied',
      format: markName,
      ticks: [first, ...marks],
    },
    {
      kind: 'log10',
      domain: decadesAround(points.map(({ y }) => y)),
      label: 'insulation resistance',
      format: (value) => formatRounded(value, 'Ω'),
    },
  );
  return (
    <Plot
      id="absorption-plot"
      title="Insulation resistance over the time of the test"
      desc={`Your readings: ${rows.map((row) => row.join(': ')).join('; ')}.`}
      frame={frame}
      caption="Both axes are logarithmic. The polarization index is the rise between the two upright lines. An arrow marks a bound."
      table={{ summary: 'The readings as a table', head: ['Time', 'Reading'], rows }}
    >
      {marks.map((mark) => (
        <LimitLine key={mark} frame={frame} axis="x" at={mark} text="" />
      ))}
      <Curve frame={frame} points={curve} />
      <Points frame={frame} points={points} />
    </Plot>
  );
}
