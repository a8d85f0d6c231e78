import { expect, test } from 'vitest';
import type { FormField, ReadingField } from '../../../../src/kernel/form/field.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';

const reading = (id: string, more: Partial<ReadingField> = {}): ReadingField => ({
  kind: 'reading',
  id,
  label: id,
  name: id,
  quantity: 'temperature',
  ...more,
});
const fields: FormField[] = [reading('winding', { bareUnitFrom: 'unit' })];

test('what stood in a field before is never read in place of what stands there now', () => {
  const read = (winding: string, unit: string) => readForm(fields, { winding, unit });
  const celsius = read('50', '°C').readings.winding;
  const fahrenheit = read('50', '°F').readings.winding;
  expect(fahrenheit).not.toEqual(celsius);
  expect(read('5x', '°F').errors.winding).toBeDefined();
  expect(read('50', '°C').readings.winding).toEqual(celsius);
});
