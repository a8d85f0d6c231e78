import type { Typed } from '../../kernel/form/field.ts';

/** What stands in the fields of a form that has no script yet. */
export function typedIn(element: ParentNode): Typed {
  const inputs = [...element.querySelectorAll<HTMLInputElement>('input, textarea')];
  return Object.fromEntries(inputs.filter(holdsAnswer).map(({ name, value }) => [name, value]));
}

/** A radio button only counts when it was changed from what the page came with. */
function holdsAnswer({ type, value, checked, defaultChecked }: HTMLInputElement): boolean {
  return type === 'radio' ? checked && !defaultChecked : value !== '';
}
