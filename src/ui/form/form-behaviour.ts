import { holdBackKeyboard, isTouch } from '../keypad/touch.ts';

/**
 * What every form does. Nothing is sent: its entries are in the state that is judged, and nowhere else. There is no
 * `autocomplete="off"`: WebKit takes such fields for secrets and empties them shortly after a page has come back from
 * its cache.
 */
export const formProps = {
  noValidate: true,
  onSubmit: (event: Event) => event.preventDefault(),
  onKeyDown: enterMovesOn,
  onChange: answerMovesOn,
} as const;

/** The "next" key of an on-screen keyboard moves to the next question, as its label says. */
function enterMovesOn(event: KeyboardEvent): void {
  const { target } = event;
  if (event.key !== 'Enter' || !(target instanceof HTMLInputElement) || target.type === 'file') return;
  event.preventDefault();
  focusNextQuestion(target);
}

/** The question without keys that "next" led to last. */
let ledTo: Element | undefined;

/** If a person came to a question by "next" and touches an answer, the keypad opens with the field after it. */
function answerMovesOn({ target }: Event): void {
  if (!(target instanceof HTMLInputElement) || ledTo !== questionOf(target)) return;
  ledTo = undefined;
  // After the answer is drawn: it may bring or remove a question.
  if (isTouch()) setTimeout(() => focusNextQuestion(target));
}

/** The buttons of a question have one place in common. */
const questionOf = (control: Element) => (control.matches('[type=radio]') ? control.closest('fieldset') : control);

/**
 * Moves from a field to the next question: a text field, or a set of radio buttons without an answer. Questions in a
 * folded part are skipped. After the last one the field loses the focus, so that an on-screen keyboard closes.
 */
export function focusNextQuestion(from: HTMLElement): void {
  const next = nextQuestion(from);
  ledTo = undefined;
  if (next === undefined) {
    from.blur();
    return;
  }
  holdBackKeyboard(next);
  next.focus();
  if (!isTouch() || !next.matches('[type=radio], [type=checkbox]')) return;
  const question = questionOf(next) ?? next;
  ledTo = question;
  question.scrollIntoView({ block: 'nearest' });
}

/** The question after this field, as `focusNextQuestion` finds it. */
export function nextQuestion(from: HTMLElement): HTMLInputElement | HTMLTextAreaElement | undefined {
  const form = from.closest('form');
  const all = [...(form?.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('input, textarea') ?? [])];
  const following = all.slice(all.indexOf(from as HTMLInputElement) + 1);
  return following.find((control) => isShown(control) && isOpenQuestion(control, all));
}

function isOpenQuestion(control: HTMLInputElement | HTMLTextAreaElement, all: readonly Element[]): boolean {
  if (control instanceof HTMLTextAreaElement || control.type === 'text' || control.type === 'date') return true;
  if (control.type === 'checkbox') return !control.disabled && !(control as HTMLInputElement).checked;
  if (control.type !== 'radio') return false;
  const group = all.filter((other) => other instanceof HTMLInputElement && other.name === control.name);
  return group.every((other) => !(other as HTMLInputElement).checked);
}

function isShown(control: HTMLElement): boolean {
  return control.getClientRects().length > 0 && control.closest('details:not([open])') === null;
}
