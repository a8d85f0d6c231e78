import { limitPoints } from '../limits.ts';

/** The cross-sections in mm² that the table of IEC 60228 lists here, as a form offers them. */
export const coreSections: readonly number[] = limitPoints('pe-core-resistance').map(([section]) => section);

/**
 * Highest resistance in Ω of one flexible copper core at 20 °C (IEC 60228, classes 5 and 6, recalled), of `metres`
 * above zero. Undefined for a cross-section that the table does not list: nothing is interpolated.
 */
export function coreResistance(metres: number, squareMillimetres: number): number | undefined {
  const perKilometre = limitPoints('pe-core-resistance').find(([section]) => section === squareMillimetres)?.[1];
  if (perKilometre === undefined || !(metres > 0) || !Number.isFinite(metres)) return undefined;
  return (perKilometre * metres) / 1000;
}
