import type { ReadForm } from '../../kernel/form/read-form.ts';
import type { TableReading } from './rule/input.ts';

export const millisecondsADay = 86_400_000;

/**
 * How cells are understood, by the answers of the form. `now` in ms from 1970-01-01; a day more is taken, since it may have
 * begun east of here.
 */
export function tableReading({ choices }: Pick<ReadForm, 'choices'>, now: number): TableReading {
  const { dateOrder: order, bareOhms: unit, decimalMark: mark, temperatureUnit: celsius } = choices;
  return {
    today: now / millisecondsADay + 1,
    ...((order === 'day-first' || order === 'month-first') && { dateOrder: order }),
    ...(unit && { bareOhms: unit }),
    ...(mark && { decimalMark: mark === 'comma' ? ',' : '.' }),
    ...(celsius && { bareTemperature: celsius }),
  };
}
