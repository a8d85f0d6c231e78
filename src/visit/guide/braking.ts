import { limitValue } from '../../kernel/limits.ts';
import { type Interval, intervalOf } from '../../kernel/reading/interval.ts';
import type { VisitAnswers } from '../steps/questions.ts';

/** What the braking circuit shows; `unclear`: not measured, or a reading without a bound that decides. */
export interface BrakingState {
  resistor: 'good' | 'bad' | 'none' | 'unclear';
  /** The switch of the braking resistor, inside the drive. */
  switch: 'good' | 'low' | 'unclear';
  readTwice: boolean;
}

export function brakingState(visit: VisitAnswers): BrakingState | undefined {
  const answer = visit.braking?.answer;
  if (answer === undefined) return undefined;
  if (answer.fitted === 'none') return { resistor: 'none', switch: 'unclear', readTwice: false };
  if (answer.fitted !== 'external') return { resistor: 'unclear', switch: 'unclear', readTwice: false };
  const [plate, ohms, toPe, toBus] = [answer.plate, answer.ohms, answer.toPe, answer.toBus].map((reading) =>
    intervalOf(reading),
  ) as [Interval, Interval, Interval, Interval];
  const off = limitValue('braking-resistor-off-plate') / 100;
  const free = limitValue('braking-resistor-to-pe');
  const short = limitValue('bridge-short');
  const bad = ohms.hi < plate.lo * (1 - off) || ohms.lo > plate.hi * (1 + off) || toPe.hi < free;
  // Whatever the plate and the reading may be within their bounds.
  const good = ohms.lo >= plate.hi * (1 - off) && ohms.hi <= plate.lo * (1 + off) && toPe.lo >= free;
  return {
    resistor: bad ? 'bad' : good ? 'good' : 'unclear',
    switch: toBus.hi <= short ? 'low' : toBus.lo > short || answer.toBus.kind === 'over' ? 'good' : 'unclear',
    readTwice: answer.again,
  };
}

/** The braking circuit speaks against power: a short or an earth there meets the bus. */
export function brakingBad(record: VisitAnswers): boolean {
  const state = brakingState(record);
  return state?.resistor === 'bad' || state?.switch === 'low';
}
