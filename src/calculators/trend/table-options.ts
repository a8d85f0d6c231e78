import type { ReadForm } from '../../kernel/form/read-form.ts';
import { millisecondsADay } from '../../kernel/reading/calendar-date.ts';
import type { TableOptions } from './rule/input.ts';

/**
 * How to read the cells, by the answers of the form. `now` in ms from 1970-01-01; one day is added, since tomorrow may
 * have begun further east.
 */
export function tableOptions({ choices }: Pick<ReadForm, 'choices'>, now: number): TableOptions {
  const { dateOrder: order, bareOhms: unit, decimalMark: mark, temperatureUnit: celsius } = choices;
  return {
    today: now / millisecondsADay + 1,
    ...((order === 'day-first' || order === 'month-first') && { dateOrder: order }),
    ...(unit && { bareOhms: unit }),
    ...(mark && { decimalMark: mark === 'comma' ? ',' : '.' }),
    ...(celsius && { bareTemperature: celsius }),
  };
}
