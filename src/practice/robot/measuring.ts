import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { Instrument } from '../../kernel/reading/interval.ts';
import { celsius, type Reading } from '../../kernel/reading/reading.ts';
import type { Machine } from '../case/machine.ts';
import type { MeterFunction } from '../simulator/instruments.ts';

/** A measurement of the guide in progress: it is assessed, then improved as its own next steps ask. */
export interface Measuring<A extends Assessment> {
  assess(): A;
  /** Does what one of the codes asks; false if the robot can do none of them, or has done them already. */
  improve(codes: readonly string[]): boolean;
}

export const accuracy = ({ percent, counts }: MeterFunction): Instrument => ({ percent, counts });

export const testerOf = ({ instruments: { insulation } }: Machine): Instrument => ({
  ...accuracy(insulation),
  upperLimit: insulation.upperLimit,
});

export const temperatureOf = ({ shownCelsius }: Machine): Reading => celsius(Math.round(shownCelsius), 1);

/** Each action is done at most `times` times; after that the person leaves the step open. */
export function onceEach(actions: Record<string, () => void>, times = 1): (codes: readonly string[]) => boolean {
  const left = new Map<string, number>();
  return (codes) => {
    const code = codes.find((one) => one in actions && (left.get(one) ?? times) > 0);
    if (code === undefined) return false;
    left.set(code, (left.get(code) ?? times) - 1);
    actions[code]?.();
    return true;
  };
}
