import { type Finding, finding } from './assessment.ts';
import { dewPoint } from './dew-point.ts';
import type { InsulationCode, InsulationInput } from './insulation-input.ts';

/** Whether the winding is at or below the dew point of the air around it; nothing where no air was given. */
export function judgeDewPoint({ ambient, humidity, windingTemperature }: InsulationInput): Finding<InsulationCode>[] {
  if (ambient.kind === 'missing' && humidity.kind === 'missing') return [];
  const dew =
    ambient.kind === 'value' && humidity.kind === 'value' ? dewPoint(ambient.value, humidity.value) : undefined;
  if (dew === undefined) return [finding('dew-point-incomplete', 'caution', { readings: ['ambient', 'humidity'] })];
  if (windingTemperature.kind !== 'value' || windingTemperature.value > dew) return [];
  const readings = ['windingTemperature', 'ambient', 'humidity'];
  const numbers = { dewPoint: dew, winding: windingTemperature.value };
  return [finding('winding-at-dew-point', 'undecided', { readings, limits: ['magnus'], numbers })];
}
