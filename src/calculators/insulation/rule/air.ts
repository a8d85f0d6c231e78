import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { dewPoint } from '../../../kernel/electrics/dew-point.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { InsulationFinding, InsulationInput, InsulationPayloads } from './input.ts';

const finding = findingMaker<InsulationPayloads>();

/**
 * Whether the winding is at or below the dew point of the air around it; empty if no air was stated. A humidity or a
 * temperature alone must not pass a winding that both together would stop. The dew point never exceeds the air
 * temperature, so a winding warmer than the air is dry whatever the humidity.
 */
export function judgeDewPoint({ ambient, humidity, windingTemperature }: InsulationInput): InsulationFinding[] {
  if (ambient.kind === 'missing' && humidity.kind === 'missing') {
    // Air at room temperature can wet only a colder winding.
    const room = limitValue('reference-temperature-after-trip');
    const cold = windingTemperature.kind === 'value' && windingTemperature.value < room;
    return cold ? [finding('air-not-stated', 'caution', { readings: ['ambient', 'humidity'] })] : [];
  }
  const dew =
    ambient.kind === 'value' && humidity.kind === 'value' ? dewPoint(ambient.value, humidity.value) : undefined;
  if (dew === undefined) {
    const warmer =
      ambient.kind === 'value' && windingTemperature.kind === 'value' && windingTemperature.value > ambient.value;
    const severity = warmer ? 'caution' : 'undecided';
    return [finding('dew-point-incomplete', severity, { readings: ['ambient', 'humidity'] })];
  }
  if (windingTemperature.kind !== 'value' || windingTemperature.value > dew) return [];
  const readings = ['windingTemperature', 'ambient', 'humidity'];
  const celsius = { windingCelsius: windingTemperature.value, dewPointCelsius: dew };
  return [finding('winding-at-dew-point', 'undecided', { readings, limits: ['magnus'], ...celsius })];
}
