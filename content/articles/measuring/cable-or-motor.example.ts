import { besideKnown, parallel } from '../../../src/kernel/electrics/parallel-law.ts';
import { formatQuantity } from '../../../src/kernel/reading/format-reading.ts';
import { type Interval, intervalOf } from '../../../src/kernel/reading/interval.ts';

/** Invented readings of Marrow Bay's Lift, in ohms and °C; a test gives them to the calculator. */
export const visit = {
  joined: 24e6,
  cable: 1.1e9,
  bonded: 26e6,
  motor: 1.6e9,
  celsius: 23,
  /** Core W with the other cores bonded to PE, once more, both ends clean and dry; and at the commissioning. */
  again: 27e6,
  before: 1.2e9,
};

const nbsp = (text: string) => text.replace(' ', '\u00a0');
export const ohms = (value: number) => nbsp(formatQuantity(Number(value.toPrecision(2)), 'Ω'));
const exactly = (value: number): Interval => intervalOf({ kind: 'value', value, unit: 'Ω' });

/** What free-ended cable and motor read side by side, and what lies beside the motor if joined reads as it does. */
export const freeTogether = ohms(parallel([visit.cable, visit.motor]));
export const bondedTogether = ohms(parallel([visit.bonded, visit.motor]));
/** Joined and cable of another invented axis, and the motor that follows from them. */
export const other = { joined: 80e6, cable: 400e6 };
export const impliedMotor = ohms(besideKnown(exactly(other.joined), [exactly(other.cable)]).lo);
