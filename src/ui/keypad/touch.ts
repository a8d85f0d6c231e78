/** Whether the person's last act was a touch, by finger or pen, and not a mouse or a key of a keyboard. */
let touched = false;
let watching = false;

/** Watches from now on; called by each field, once the page is alive. */
export function watchTouch(): void {
  if (watching) return;
  watching = true;
  const note = (target: EventTarget | null, byTouch: boolean) => {
    // A person who works the keypad, in whatever way, wants it with the next field too.
    if (!(target instanceof Element && target.closest('.keypad') !== null)) touched = byTouch;
  };
  const pointed = ({ target, pointerType }: PointerEvent) =>
    note(target, pointerType === 'touch' || pointerType === 'pen');
  document.addEventListener('pointerdown', pointed, true);
  document.addEventListener('keydown', ({ target }) => note(target, false), true);
}

export const isTouch = () => touched;

const key = 'fieldbook-keyboard';

/** Whether the person has chosen, on this device, to type readings with the keyboard of the device. */
export function prefersDevice(): boolean {
  try {
    return localStorage.getItem(key) === 'device';
  } catch {
    // Storage is refused: then the choice holds as long as the page.
    return chosen === 'device';
  }
}

let chosen: 'device' | 'keypad' = 'keypad';

/** The script of the keypad could not be fetched. */
let missing = false;

/** Until the person asks for the keypad again, or the page is loaded again. */
export function doWithoutKeypad(): void {
  missing = true;
}

export function preferKeyboard(which: 'device' | 'keypad'): void {
  chosen = which;
  missing = false;
  try {
    if (which === 'device') localStorage.setItem(key, which);
    else localStorage.removeItem(key);
  } catch {
    // Refused or full: see above.
  }
}

/** Whether a reading field that gets the focus now opens the keypad. */
export const opensKeypad = () => touched && !missing && !prefersDevice();

/**
 * Before a field gets the focus: the keyboard of the device must not come up where the keypad opens. Only fields that
 * have a keypad carry the mark.
 */
export function holdBackKeyboard(field: Element): void {
  if (opensKeypad() && field instanceof HTMLInputElement && field.dataset.keypad !== undefined)
    field.setAttribute('inputmode', 'none');
}
