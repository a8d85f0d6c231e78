import { expect, it } from 'vitest';
import { limit, limitValue } from '../../src/kernel/limits.ts';

/** Source: IEC 60903, highest voltages of insulating gloves by class, read in tables of the glove classes that quote it. */
it.each([
  ['glove-class-00', 500],
  ['glove-class-00-dc', 750],
  ['glove-class-0', 1000],
  ['glove-class-0-dc', 1500],
] as const)('%s is %d V (read in tables that quote the standard)', (id, volts) => {
  expect(limitValue(id)).toBe(volts);
  expect(limit(id)).toMatchObject({ source: 'iec-60903', recalled: false, unit: 'V' });
});

/** A bus that brakes at 700 V or more is above what class 00 bears, although the AC figure of the mains is not. */
it('the DC figure of a class is one and a half times its AC figure', () => {
  expect(limitValue('glove-class-00-dc')).toBe(1.5 * limitValue('glove-class-00'));
  expect(limitValue('glove-class-0-dc')).toBe(1.5 * limitValue('glove-class-0'));
});
