import { KeptOutRows } from './KeptOutRows.tsx';
import type { TrendAssessment } from './rule/input.ts';
import { TrendPlot } from './TrendPlot.tsx';

/** The rows as shown: the used ones as a plot, the others with their reasons. */
export function TrendDrawing({ assessment }: { assessment: TrendAssessment }) {
  return (
    <>
      <TrendPlot assessment={assessment} />
      <KeptOutRows rows={assessment.keptOut} />
    </>
  );
}
