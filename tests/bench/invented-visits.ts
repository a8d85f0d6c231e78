import { newVisit } from '../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../src/visit/record/visit-schema.ts';

const terminals = ['U', 'V', 'W'];
const mega = (value: number) => `${value.toFixed(0)} MΩ`;

/** One visit each half year to an axis, with all its measured steps; invented. `axis` and `visit` from 0. */
export function inventedVisit(axis: number, visit: number): VisitRecord {
  const day = new Date(Date.UTC(2016, axis % 12, 1 + (axis % 27)));
  day.setUTCMonth(day.getUTCMonth() + visit * 6);
  const at = `${day.toISOString().slice(0, 19)}+00:00`;
  const level = 2000 / (1 + visit / 6) + ((axis * 7 + visit * 13) % 90);
  const step = (seq: number, form: Record<string, string>) => ({
    ...{ seq, at, stretch: 1, form },
    readAt: Object.fromEntries(Object.keys(form).map((id) => [id, at])),
  });
  const base = newVisit(`bench-${axis}-${visit}-visit`, at, {
    machine: `Furnace line ${1 + (axis % 20)}`,
    axis: `Axis ${1 + Math.floor(axis / 20)}`,
    motor: `Motor type ${axis % 8}, no. ${axis}`,
  });
  return {
    ...base,
    seq: 4,
    steps: {
      insulation: step(1, {
        ...rows('', terminals, level),
        PE: '0.2 Ω',
        windingTemperature: '24 °C',
        testVoltage: '500 V',
      }),
      isolation: step(2, {
        ...rows('joined', terminals, level),
        ...rows('cable', terminals, level * 6),
        ...rows('bonded', terminals, level * 5),
        ...rows('motor', terminals, level * 1.2),
        motorTemperature: '24 °C',
      }),
      winding: step(3, { UV: '1.62 Ω', VW: '1.63 Ω', WU: '1.62 Ω', windingTemperature: '24 °C' }),
      bridge: step(4, { ...rows('plus', terminals, 470, 'k'), ...rows('minus', terminals, 46, 'k') }),
    },
  };
}

function rows(before: string, names: readonly string[], value: number, unit = ''): Record<string, string> {
  return Object.fromEntries(
    names.map((name, index) => [
      before + name,
      unit === '' ? mega(value + index) : `${(value + index).toFixed(1)}${unit}`,
    ]),
  );
}

/** Readings that are compared over the years, in one such visit. */
export const readingsEach = 25;
