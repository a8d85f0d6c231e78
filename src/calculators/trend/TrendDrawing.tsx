import { KeptOutRows } from './KeptOutRows.tsx';
import type { TrendAssessment } from './rule/input.ts';
import { TrendPlot } from './TrendPlot.tsx';

/** What is shown of the rows: those that are used as a plot, the others with their reasons. */
export function TrendDrawing({ assessment }: { assessment: TrendAssessment }) {
  return (
    <>
      <TrendPlot assessment={assessment} />
      <KeptOutRows rows={assessment.keptOut} />
    </>
  );
}
