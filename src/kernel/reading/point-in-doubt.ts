import { limitRange, limitValue } from '../limits.ts';
import { type Quantity, quantityRules } from './quantity.ts';

/**
 * Whether a single point in a figure may separate thousands, so that the person is asked: `1.000` is one on a display
 * and one thousand in the handwriting of many countries. `toBase` gives the value, in the base unit, of a numeral in
 * the unit that was typed.
 *
 * The point is the decimal mark, as instruments show it, unless exactly three digits follow, no zero leads, and the
 * thousandfold makes sense as well: this field takes it, such a machine has it (`low-voltage-dc`: 4.321 V is no 4321
 * V), and nobody would have written it in another unit (10450 mΩ is 10.45 Ω). Then it is asked about if one of these is
 * true:
 * - The figure comes from a label, a drawing or a clock (a capacitance, a waiting time), not from a display.
 * - Three digits precede the point too: six digits are more than a meter of the trade shows.
 * - A safety limit is between the two meanings, and the point is the unsafe one: 1.000 Ω is a sound protective
 *   conductor and 1000 Ω a broken one; 1.000 V is a discharged bus and 1000 V kills. If the decimal mark gives the
 *   worse reading nothing is asked: 1.234 MΩ of insulation counts as bad.
 */
export function pointInDoubt(digits: string, quantity: Quantity, toBase: (numeral: string) => number): boolean {
  const [, whole = ''] = /^([1-9]\d{0,2})\.\d{3}$/.exec(digits) ?? [];
  if (whole === '') return false;
  const { accepts, printed, dangerAbove = [], usualTo } = quantityRules[quantity];
  const [shown, thousandfold] = [toBase(digits), toBase(digits.replace('.', ''))].map(Math.abs) as [number, number];
  const highest = usualTo === undefined ? limitRange(accepts).to : limitValue(usualTo);
  if (!(thousandfold <= highest)) return false;
  if (printed) return true;
  if (whole.length > 1 && Math.abs(toBase('1')) < 1) return false;
  if (whole.length === 3) return true;
  return dangerAbove.map(limitValue).some((limit) => shown <= limit && limit < thousandfold);
}
