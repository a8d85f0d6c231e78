import { CheckRows } from '../../ui/plot/CheckRows.tsx';
import { bendTest } from './about.ts';
import { bendRows } from './checks.ts';
import type { BendAssessment } from './rule/input.ts';

/** Each loop of the first movement, and the positions. */
export function BendRows({ assessment }: { assessment: BendAssessment }) {
  return (
    <CheckRows
      name={bendTest.name}
      title="What each loop did while the cable was moved"
      rows={bendRows(assessment)}
      caption="Loops in the first movement. A loop that passes was steady, and no more."
    />
  );
}
