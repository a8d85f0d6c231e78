import { Curve } from '../../ui/plot/Curve.tsx';
import { LimitLine } from '../../ui/plot/LimitLine.tsx';
import { Plot } from '../../ui/plot/Plot.tsx';
import type { KeptTrace } from './kept-trace.ts';
import { nearPlot, traceInWords, wholePlot } from './plot-data.ts';

const looks = ['solid', 'dashed', 'dotted'] as const;

/** The trip and the whole recording, with the moment marked that all rules look at. */
export function TracePlots({ kept }: { kept: KeptTrace }) {
  const near = nearPlot(kept);
  const whole = wholePlot(kept);
  const words = traceInWords(kept);
  return (
    <>
      <Plot
        id="trip-trace-near"
        title="The last moments"
        desc={words.near}
        frame={near.frame}
        table={near.table}
        caption="Solid: U. Dashed: V. Dotted: W. The line is the trip."
      >
        {near.curves.map((points, index) => (
          <Curve key={index} frame={near.frame} points={points} look={looks[index] ?? 'solid'} />
        ))}
        <LimitLine frame={near.frame} axis="x" at={near.trip} text="trip" />
      </Plot>
      <Plot
        id="trip-trace-whole"
        title="The whole recording"
        desc={words.whole}
        frame={whole.frame}
        table={whole.table}
        caption="Solid: highest current. Dashed: speed. Dotted: bus. Each as a share of its own highest figure."
      >
        {whole.curves.map(
          (points, index) =>
            points.length > 0 && (
              <Curve key={index} frame={whole.frame} points={points} look={looks[index] ?? 'solid'} />
            ),
        )}
        <LimitLine frame={whole.frame} axis="x" at={whole.trip} text="trip" />
      </Plot>
    </>
  );
}
