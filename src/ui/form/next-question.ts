/**
 * Goes from a field to the next question: a text field, or a set of radio buttons that has no answer yet. Questions that
 * are folded away are not asked. After the last one the field lets go of the focus, and a screen's keyboard shuts.
 */
export function focusNextQuestion(from: HTMLElement): void {
  const form = from.closest('form');
  const all = [...(form?.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input, textarea') ?? [])];
  const following = all.slice(all.indexOf(from as HTMLInputElement) + 1);
  const next = following.find((control) => isShown(control) && isOpenQuestion(control, all));
  if (next === undefined) from.blur();
  else next.focus();
}

function isOpenQuestion(control: HTMLInputElement | HTMLTextAreaElement, all: readonly Element[]): boolean {
  if (control instanceof HTMLTextAreaElement || control.type === 'text' || control.type === 'date') return true;
  if (control.type === 'checkbox') return !(control as HTMLInputElement).checked;
  if (control.type !== 'radio') return false;
  const group = all.filter((other) => other instanceof HTMLInputElement && other.name === control.name);
  return group.every((other) => !(other as HTMLInputElement).checked);
}

function isShown(control: HTMLElement): boolean {
  return control.getClientRects().length > 0 && control.closest('details:not([open])') === null;
}

/** The "next" key of an on-screen keyboard goes to the next question, as its label says. */
export function enterMovesOn(event: KeyboardEvent): void {
  const { target } = event;
  if (event.key !== 'Enter' || !(target instanceof HTMLInputElement) || target.type === 'file') return;
  event.preventDefault();
  focusNextQuestion(target);
}
