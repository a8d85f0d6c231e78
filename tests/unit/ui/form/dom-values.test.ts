import { expect, test } from 'vitest';
import { typedIn } from '../../../../src/ui/form/dom-values.ts';

const input = (entry: Partial<HTMLInputElement>) => ({ type: 'text', checked: false, defaultChecked: false, ...entry });
const formWith = (...inputs: Partial<HTMLInputElement>[]) =>
  ({ querySelectorAll: () => inputs.map(input) }) as unknown as ParentNode;

test('takes what was typed and leaves what is empty', () => {
  const form = formWith({ name: 'plusU', value: '450k' }, { name: 'plusV', value: '' });
  expect(typedIn(form)).toEqual({ plusU: '450k' });
});

test('takes a radio button that the person changed, not the one that the page came with', () => {
  const form = formWith(
    { type: 'radio', name: 'motorLeads', value: 'off', checked: true },
    { type: 'radio', name: 'motorLeads', value: 'connected' },
    { type: 'radio', name: 'correction', value: 'halving', checked: true, defaultChecked: true },
  );
  expect(typedIn(form)).toEqual({ motorLeads: 'off' });
});
