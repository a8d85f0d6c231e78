/**
 * What every form does. Nothing is sent: its entries are in the state that is judged, and nowhere else. There is no
 * `autocomplete="off"`: WebKit takes such fields for secrets and empties them shortly after a page has come back from
 * its cache.
 */
export const formProps = {
  noValidate: true,
  onSubmit: (event: Event) => event.preventDefault(),
  onKeyDown: enterMovesOn,
} as const;

/** The "next" key of an on-screen keyboard moves to the next question, as its label says. */
function enterMovesOn(event: KeyboardEvent): void {
  const { target } = event;
  if (event.key !== 'Enter' || !(target instanceof HTMLInputElement) || target.type === 'file') return;
  event.preventDefault();
  focusNextQuestion(target);
}

/**
 * Moves from a field to the next question: a text field, or a set of radio buttons without an answer. Questions in a
 * folded part are skipped. After the last one the field loses the focus, so that an on-screen keyboard closes.
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
