// What runs in the page. Each function is sent as text, so it uses nothing from outside itself.

/**
 * What a test points at: a CSS selector, or words as they are read. Words: an element whose whole text they are, or
 * else the first whose text holds them; only what is seen counts.
 */
export type Target = string | WordsTarget;

export interface WordsTarget {
  /** Words of a label: `click` presses the label, as a thumb does; `fill` and `valueOf` take its field. */
  label?: string;
  button?: string;
  link?: string;
  /** Any other element: the innermost with this text. */
  text?: string;
  /** Only within the group (fieldset) whose legend holds these words. */
  group?: string;
  /** Only within this selector. */
  within?: string;
}

export type Act = 'aim' | 'field' | 'text' | 'value' | 'checked' | 'count' | 'choose';

/** `late` is why it can't be done yet: it is tried again until it can. */
export type Done = { value: unknown } | { late: string };

/** Finds the target and does one thing with it. `aim`: the place to press; `field`: focuses it, all text selected. */
export function act(what: Act, target: Target, option = ''): Done {
  const words = (text: string | null | undefined) => (text ?? '').replace(/\s+/g, ' ').trim();
  const seen = (element: Element) => {
    const box = element.getBoundingClientRect();
    return box.width > 0 && box.height > 0 && getComputedStyle(element).visibility === 'visible';
  };
  const find = (): Element[] => {
    if (typeof target === 'string') return [...document.querySelectorAll(target)];
    const roots = [...document.querySelectorAll(target.within ?? 'body')];
    const groups = target.group === undefined ? roots : roots.flatMap((root) => inGroup(root, target.group ?? ''));
    const [selector, wanted] = kind(target);
    const held = groups
      .flatMap((root) => [...root.querySelectorAll(selector)])
      .filter((element) => seen(element) && words(element.textContent).includes(wanted));
    const innermost =
      target.text === undefined ? held : held.filter((one) => !held.some((o) => o !== one && one.contains(o)));
    return innermost.sort((a, b) => Number(words(b.textContent) === wanted) - Number(words(a.textContent) === wanted));
  };
  const inGroup = (root: Element, legend: string) =>
    [...root.querySelectorAll('fieldset, [role="group"]')].filter((group) =>
      words(group.querySelector('legend')?.textContent ?? group.getAttribute('aria-label')).includes(legend),
    );
  const kind = ({ label, button, link, text }: WordsTarget): [selector: string, wanted: string] => {
    if (label !== undefined) return ['label', label];
    if (button !== undefined) return ['button', button];
    if (link !== undefined) return ['a[href]', link];
    return ['*', text ?? ''];
  };

  const all = find();
  if (what === 'count') return { value: all.length };
  const element = all[0];
  if (element === undefined) return { late: 'there is none' };
  const field = (element instanceof HTMLLabelElement ? element.control : element) as HTMLInputElement | null;
  if (what === 'text') return { value: words(element.textContent) };
  if (field === null) return { late: 'its label has no field' };
  if (what === 'value') return { value: field.value };
  if (what === 'checked') return { value: field.checked };

  if (field.matches(':disabled')) return { late: 'it is disabled' };
  if (what === 'choose') {
    field.value = option;
    if (field.value !== option) return { late: `it has no choice ${option}` };
    for (const event of ['input', 'change']) field.dispatchEvent(new Event(event, { bubbles: true }));
    return { value: true };
  }
  const pressed = what === 'field' ? field : element;
  if (!seen(pressed)) return { late: 'it is not seen' };
  const before = pressed.getBoundingClientRect();
  pressed.scrollIntoView({ block: 'center', behavior: 'instant' });
  const box = pressed.getBoundingClientRect();
  const x = box.left + box.width / 2;
  const y = box.top + box.height / 2;
  const hit = document.elementFromPoint(x, y);
  if (hit === null || !(pressed.contains(hit) || hit.contains(pressed) || hit.closest('label')?.control === pressed)) {
    return { late: `it is covered by ${hit?.tagName.toLowerCase()}.${hit?.getAttribute('class')}` };
  }
  return { value: { x, y, moved: before.top !== box.top } };
}

/** Selects all that stands in the field that has the focus, so that the next key replaces it. */
export function selectAll(): boolean {
  const field = document.activeElement;
  if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return false;
  field.select();
  return true;
}

export interface Arrival {
  /** Tells one document from another: the time when it began to load. */
  born: number;
  url: string;
  ready: boolean;
}

export function whereAmI(): Arrival {
  return { born: performance.timeOrigin, url: location.href, ready: document.readyState === 'complete' };
}

/** After the answer has been given, as leaving the page ends the script. */
export function leave(way: 'reload' | 'back' | 'forward'): void {
  setTimeout(() => (way === 'reload' ? location.reload() : history[way]()), 0);
}
