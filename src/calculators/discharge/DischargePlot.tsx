import { clockFace, formatRounded } from '../../kernel/reading/format-reading.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { Band } from '../../ui/plot/Band.tsx';
import { Curve } from '../../ui/plot/Curve.tsx';
import { plotFrame } from '../../ui/plot/frame.ts';
import { LimitLine } from '../../ui/plot/LimitLine.tsx';
import { Plot } from '../../ui/plot/Plot.tsx';
import { dischargePlotData } from './discharge-plot-data.ts';
import type { DischargeAssessment } from './rule/assess.ts';
import { onlyTheMeter } from './wait-words.ts';

/**
 * The bus voltage over time, between its slowest and its fastest discharge, on a logarithmic axis, so that both are
 * straight lines.
 */
export function DischargePlot({ assessment }: { assessment: DischargeAssessment }) {
  const data = dischargePlotData(assessment);
  if (data === undefined) return null;
  const { slow, fast, machine, touch, rows, fromReading } = data;
  const last = lastIn(slow)?.[0] ?? 1;
  const top = slow[0]?.[1] ?? 100;
  const inSeconds = last < 100;
  const frame = plotFrame(
    {
      kind: 'linear',
      domain: [0, last],
      label: `${fromReading ? 'since the first reading' : 'since the supply was cut'}, ${inSeconds ? 's' : 'min:s'}`,
      format: inSeconds ? String : clockFace,
    },
    {
      kind: 'log10',
      domain: [10, Math.max(100, 2 * top)],
      label: 'bus voltage',
      format: (value) => formatRounded(value, 'V'),
    },
  );
  return (
    <Plot
      id="discharge-plot"
      title="Computed voltage of the bus over the time"
      desc={`At the slowest the bus falls from ${formatRounded(top, 'V')} to ${formatRounded(touch, 'V')} within the drawing. ${onlyTheMeter}`}
      frame={frame}
      caption={`Solid: the slowest that the entries allow, which counts. Dashed: the fastest. ${onlyTheMeter}`}
      table={{ summary: 'The curve as a table', head: ['Time', 'Slowest', 'Fastest'], rows, note: onlyTheMeter }}
    >
      <Band frame={frame} upper={slow} lower={fast} look="spread" />
      <LimitLine frame={frame} at={machine} text={formatRounded(machine, 'V')} />
      <LimitLine frame={frame} at={touch} text={formatRounded(touch, 'V')} below />
      <Curve frame={frame} points={fast} look="dashed" />
      <Curve frame={frame} points={slow} />
    </Plot>
  );
}
