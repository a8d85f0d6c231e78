import { type DiodePlace, partsOfPosition, type Rail, type SwitchPosition } from './rule/switch-position.ts';

export const railNames: Record<Rail, string> = { plus: 'DC+', minus: 'DC−' };

/** `plusU` reads "DC+ to U". */
export function positionName(position: SwitchPosition): string {
  const { rail, phase } = partsOfPosition[position];
  return `${railNames[rail]} to ${phase}`;
}

/** `plusU` reads "upper transistor of U". */
export function switchName(position: SwitchPosition): string {
  const { rail, phase } = partsOfPosition[position];
  return `${rail === 'plus' ? 'upper' : 'lower'} transistor of ${phase}`;
}

/** "DC+ and U, conducting". */
export function readingName({ position, way }: DiodePlace): string {
  const { rail, phase } = partsOfPosition[position];
  return `${railNames[rail]} and ${phase}, ${way === 'forward' ? 'conducting' : 'blocking'}`;
}
