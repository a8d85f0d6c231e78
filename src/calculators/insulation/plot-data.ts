import { type Phases, phases } from '../../kernel/electrics/phases.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import type { Shape } from '../../ui/plot/Points.tsx';
import type { InsulationInput } from './rule/input.ts';
import { limitCurve } from './rule/target.ts';

/** A phase in the plot; an arrow if the meter showed only a bound. */
interface PhaseMark {
  label: string;
  temperature: number;
  ohms: number;
  shape: Shape;
}

export interface PlotData {
  curve: ReturnType<typeof limitCurve>;
  marks: PhaseMark[];
}

/** The bottom of the plot: anything lower is drawn there, a short too. */
const lowestShown = 1e3;

/** Each phase has a shape of its own. */
const shapeOf: Phases<Shape> = { U: 'dot', V: 'square', W: 'triangle' };

/** What the plot shows, or undefined while there is no limit to show. */
export function plotData(input: InsulationInput): PlotData | undefined {
  const curve = limitCurve(input);
  return curve.length === 0 ? undefined : { curve, marks: marksOf(input) };
}

function marksOf({ readings, together = missing, windingTemperature }: InsulationInput): PhaseMark[] {
  if (windingTemperature.kind !== 'value') return [];
  const temperature = windingTemperature.value;
  const read = [
    ...phases.map((phase) => ({ label: phase as string, shape: shapeOf[phase], reading: readings[phase] })),
    { label: 'U, V, W', shape: 'dot' as const, reading: together },
  ];
  return read.flatMap(({ label, shape, reading }) => {
    const place = placeOf(reading);
    return place === undefined ? [] : [{ label, temperature, shape, ...place }];
  });
}

function placeOf(reading: Reading): (Pick<PhaseMark, 'ohms'> & Partial<Pick<PhaseMark, 'shape'>>) | undefined {
  switch (reading.kind) {
    case 'value':
      return reading.value < lowestShown ? { ohms: lowestShown, shape: 'below' } : { ohms: reading.value };
    case 'over':
      return reading.atLeast ? { ohms: Math.max(lowestShown, reading.atLeast), shape: 'above' } : undefined;
    case 'under':
      return reading.atMost ? { ohms: Math.max(lowestShown, reading.atMost), shape: 'below' } : undefined;
    default:
      return undefined;
  }
}
