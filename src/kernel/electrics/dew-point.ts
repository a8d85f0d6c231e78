import { limitConstant, limitRange } from '../limits.ts';

/**
 * Dew point in °C by the Magnus formula (Alduchov and Eskridge 1996) from air temperature in °C and relative
 * humidity in percent. Undefined for humidity outside 0 < RH ≤ 100 or air outside the range used here.
 */
export function dewPoint(airCelsius: number, humidityPercent: number): number | undefined {
  const { from, to } = limitRange('magnus-validity');
  if (!(humidityPercent > 0 && humidityPercent <= 100) || !(airCelsius >= from && airCelsius <= to)) return undefined;
  const a = limitConstant('magnus', 'a');
  const b = limitConstant('magnus', 'b');
  const gamma = Math.log(humidityPercent / 100) + (a * airCelsius) / (b + airCelsius);
  return (b * gamma) / (a - gamma);
}
