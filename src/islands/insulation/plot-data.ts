import { type InsulationInput, limitCurve, phases, type Reading } from '../../calc/index.ts';
import { lastIn } from '../../calc/last-in.ts';

type Curve = ReturnType<typeof limitCurve>;

/** A phase in the plot; `bound` where the meter showed only a limit, with the direction in which the value lies. */
export interface Mark {
  label: string;
  temperature: number;
  ohms: number;
  bound?: 'above' | 'below';
}

export interface PlotData {
  curve: Curve;
  marks: Mark[];
  temperatures: [number, number];
  /** Whole decades in Ω. */
  ohms: [number, number];
}

/** Nothing lower is told apart in the plot: a dead short stands at its foot. */
const lowestShown = 1e3;

/** What the plot shows, or undefined while there is no limit to show. */
export function plotData(input: InsulationInput): PlotData | undefined {
  const curve = limitCurve(input);
  const first = curve[0];
  const last = lastIn(curve);
  if (first === undefined || last === undefined) return undefined;
  const marks = marksOf(input);
  const temperature = input.windingTemperature.kind === 'value' ? [input.windingTemperature.value] : [];
  const ohms = [...curve.flatMap(({ goFrom, noGoBelow }) => [goFrom, noGoBelow]), ...marks.map((mark) => mark.ohms)];
  const temperatures = [first.temperature, last.temperature, ...temperature];
  return {
    curve,
    marks,
    temperatures: [Math.min(...temperatures), Math.max(...temperatures)],
    ohms: [10 ** Math.floor(Math.log10(Math.min(...ohms))), 10 ** Math.ceil(Math.log10(Math.max(...ohms)))],
  };
}

function marksOf({ readings, windingTemperature }: InsulationInput): Mark[] {
  if (windingTemperature.kind !== 'value') return [];
  const temperature = windingTemperature.value;
  return phases.flatMap((phase) => {
    const place = placeOf(readings[phase]);
    return place === undefined ? [] : [{ label: phase, temperature, ...place }];
  });
}

function placeOf(reading: Reading): Pick<Mark, 'ohms' | 'bound'> | undefined {
  switch (reading.kind) {
    case 'value':
      return reading.value < lowestShown ? { ohms: lowestShown, bound: 'below' } : { ohms: reading.value };
    case 'over':
      return reading.atLeast ? { ohms: Math.max(lowestShown, reading.atLeast), bound: 'above' } : undefined;
    case 'under':
      return reading.atMost ? { ohms: Math.max(lowestShown, reading.atMost), bound: 'below' } : undefined;
    default:
      return undefined;
  }
}
