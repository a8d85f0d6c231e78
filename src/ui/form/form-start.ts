import type { Typed } from '../../kernel/form/field.ts';

/** The case that the address asks for: `#case=marrow-bay-lift`. The fragment never leaves the device. */
export function caseInAddress(hash: string = location.hash): string | null {
  return new URLSearchParams(hash.slice(1)).get('case');
}

/** Whether the page came by reload or by going back, so that the person has been here before. */
export function openedByReload(): boolean {
  const [navigation] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  return navigation?.type === 'reload' || navigation?.type === 'back_forward';
}

/** What was typed into a form before its script came. */
export function typedBeforeScript(element: ParentNode): Typed {
  const inputs = [...element.querySelectorAll<HTMLInputElement>('input, textarea')];
  return Object.fromEntries(inputs.filter(holdsAnswer).map(({ name, value }) => [name, value]));
}

/** A radio button only counts if it was changed from what the page came with. */
function holdsAnswer({ type, value, checked, defaultChecked }: HTMLInputElement): boolean {
  return type === 'radio' ? checked && !defaultChecked : value !== '';
}
