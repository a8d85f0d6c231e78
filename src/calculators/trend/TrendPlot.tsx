import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { Band } from '../../ui/plot/Band.tsx';
import { Curve } from '../../ui/plot/Curve.tsx';
import { LimitLine } from '../../ui/plot/LimitLine.tsx';
import { Plot } from '../../ui/plot/Plot.tsx';
import { Points } from '../../ui/plot/Points.tsx';
import { trendPlotData } from './plot-data.ts';
import { trendInWords } from './plot-words.ts';
import type { TrendAssessment } from './rule/input.ts';

/** The corrected readings over the years, the line through them, and the minimum. */
export function TrendPlot({ assessment, id = 'trend-plot' }: { assessment: TrendAssessment; id?: string }) {
  const drawing = trendPlotData(assessment);
  if (drawing === undefined) return null;
  const { frame, points, line, upper, lower, table } = drawing;
  const { minimum } = assessment;
  return (
    <Plot
      id={id}
      title="Corrected readings over the years"
      desc={trendInWords(assessment)}
      frame={frame}
      table={table}
      caption={
        <>
          Dots: readings. Arrows: bounds, not in the line. Crosses: sudden falls.
          {line.length > 0 && ' The grey area is what the scatter leaves open.'}
        </>
      }
    >
      {line.length > 0 && <Band frame={frame} upper={upper} lower={lower} look="spread" />}
      {minimum !== undefined && (
        // Readings fall from above, so there is room for the words below the line.
        <LimitLine
          frame={frame}
          at={minimum}
          text={`minimum ${formatRounded(minimum, 'Ω')}`}
          below={frame.y.place(minimum) < frame.box.bottom - 24}
        />
      )}
      <Points frame={frame} points={points} />
      {/* Drawn last, so that a thousand points don't hide it. */}
      {line.length > 0 && <Curve frame={frame} points={line} look="dashed" />}
    </Plot>
  );
}
