import { expect, test } from 'vitest';
import { caseInAddress, typedBeforeScript } from '../../../../src/ui/form/form-start.ts';

const input = (entry: Partial<HTMLInputElement>) => ({ type: 'text', checked: false, defaultChecked: false, ...entry });
const formWith = (...inputs: Partial<HTMLInputElement>[]) =>
  ({ querySelectorAll: () => inputs.map(input) }) as unknown as ParentNode;

test('takes what was typed and leaves what is empty', () => {
  const form = formWith({ name: 'plusU', value: '450k' }, { name: 'plusV', value: '' });
  expect(typedBeforeScript(form)).toEqual({ plusU: '450k' });
});

test('takes a radio button that the person changed, not the one that the page came with', () => {
  const form = formWith(
    { type: 'radio', name: 'motorLeads', value: 'off', checked: true },
    { type: 'radio', name: 'motorLeads', value: 'connected' },
    { type: 'radio', name: 'correction', value: 'halving', checked: true, defaultChecked: true },
  );
  expect(typedBeforeScript(form)).toEqual({ motorLeads: 'off' });
});

test('the address names a case, or none', () => {
  expect(caseInAddress('#case=marrow-bay-lift')).toBe('marrow-bay-lift');
  expect(caseInAddress('#how-it-judges')).toBeNull();
  expect(caseInAddress('')).toBeNull();
});
