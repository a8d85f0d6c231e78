import type { EndFilter, IdleCores } from '../assessment/cable-ends.ts';
import type { ChoiceField } from './field.ts';
import type { ReadForm } from './read-form.ts';

/** No default answer: cores that hang free hide a short to an extra-low-voltage circuit. */
export const idleCores: ChoiceField = {
  kind: 'choice',
  id: 'idleCores',
  name: 'Brake, sensor and other idle cores',
  hint: 'Off at the drive end, joined and connected to PE while you read. No go without it. A feedback pair in the same cable: only as the motor’s manual says.',
  options: [
    { value: 'to-pe', label: 'Joined and connected to PE' },
    { value: 'none', label: 'There are none' },
    { value: 'free', label: 'They hang free' },
  ],
  initial: '',
};

export const filter: ChoiceField = {
  kind: 'choice',
  id: 'filter',
  name: 'Output filter or surge suppressor on the cable',
  options: [
    { value: 'none', label: 'None, or taken off' },
    { value: 'fitted', label: 'Still fitted' },
  ],
  initial: '',
};

/** How U, V and W meet the tester where the windings join them anyway. */
export const rowKind: ChoiceField = {
  kind: 'choice',
  id: 'rowKind',
  name: 'U, V and W are read',
  options: [
    { value: 'joined', label: 'Joined, in one reading' },
    { value: 'single', label: 'One by one' },
  ],
  initial: 'joined',
};

export function idleCoresOf({ choices }: ReadForm): IdleCores {
  const { idleCores: chosen } = choices;
  return chosen === 'to-pe' || chosen === 'none' || chosen === 'free' ? chosen : 'not-stated';
}

export function filterOf({ choices }: ReadForm): EndFilter {
  const { filter: chosen } = choices;
  return chosen === 'none' || chosen === 'fitted' ? chosen : 'not-stated';
}

export function rowKindOf({ choices }: ReadForm): 'joined' | 'single' {
  return choices.rowKind === 'single' ? 'single' : 'joined';
}
