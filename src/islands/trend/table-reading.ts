import type { TableReading } from '../../calc/index.ts';
import type { ReadForm } from '../form/read-form.ts';

export const millisecondsADay = 86_400_000;

/** How cells are understood, by the answers of the form. `today` allows for the date line. */
export function tableReading({ choices }: Pick<ReadForm, 'choices'>): TableReading {
  const { dateOrder: order, bareOhms: unit, decimalMark: mark, temperatureUnit: celsius } = choices;
  return {
    today: Date.now() / millisecondsADay + 1,
    ...((order === 'day-first' || order === 'month-first') && { dateOrder: order }),
    ...(unit && { bareOhms: unit }),
    ...(mark && { decimalMark: mark === 'comma' ? ',' : '.' }),
    ...(celsius && { bareTemperature: celsius }),
  };
}
