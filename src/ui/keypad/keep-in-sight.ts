/** From the top of the window, in CSS pixels. */
export interface Band {
  top: number;
  bottom: number;
}

/** Kept free above and below what is shown, in CSS pixels. */
const margin = 8;

/**
 * How far the page must scroll down, in CSS pixels, so that a field and its neighbours are in the free part of the
 * window; the field alone, in the middle, if there is no room for all. 0 if nothing has to move.
 */
export function scrollToShow(field: Band, neighbours: readonly Band[], free: Band): number {
  const all = [field, ...neighbours];
  const group = { top: Math.min(...all.map(({ top }) => top)), bottom: Math.max(...all.map(({ bottom }) => bottom)) };
  const room = free.bottom - free.top - 2 * margin;
  if (group.bottom - group.top <= room) return leastScroll(group, free);
  return (field.top + field.bottom) / 2 - (free.top + free.bottom) / 2;
}

function leastScroll(group: Band, free: Band): number {
  const above = group.top - free.top - margin;
  const below = group.bottom - free.bottom + margin;
  return above < 0 ? above : Math.max(0, below);
}

const openKeypads = new Set<HTMLElement>();

/** The page keeps its room for the keypad a moment longer: nothing must move under a finger that is pressing it. */
const roomKeptMilliseconds = 400;

/**
 * Makes room for a keypad at the bottom of the window and brings the field that it types into above it. Returns what
 * gives the room back.
 */
export function makeRoom(keypad: HTMLElement, input: HTMLElement): () => void {
  const root = document.documentElement;
  openKeypads.add(keypad);
  const show = () => {
    root.style.setProperty('--keypad-height', `${keypad.offsetHeight}px`);
    root.classList.add('has-keypad');
    bringIntoSight(keypad, input);
  };
  show();
  // The device is turned.
  addEventListener('resize', show);
  return () => {
    removeEventListener('resize', show);
    openKeypads.delete(keypad);
    setTimeout(() => {
      if (openKeypads.size > 0) return;
      root.classList.remove('has-keypad');
      root.style.removeProperty('--keypad-height');
    }, roomKeptMilliseconds);
  };
}

/** The bar with the verdict, which stands above the keypad while there is one. */
function shownBar(input: HTMLElement): DOMRect | undefined {
  const bar = input.closest('form')?.querySelector('.verdict-bar');
  return bar && getComputedStyle(bar).visibility === 'visible' ? bar.getBoundingClientRect() : undefined;
}

function bringIntoSight(keypad: HTMLElement, input: HTMLElement): void {
  const field = input.closest('.field') ?? input;
  const beside = [field.previousElementSibling, field.nextElementSibling].filter((one) => one?.matches('.field'));
  const bands = beside.map((one) => (one as Element).getBoundingClientRect());
  const above = keypad.getBoundingClientRect().top;
  const bar = shownBar(input);
  const isOver = bar !== undefined && bar.bottom > above - bar.height && bar.top < above;
  const top = Number.parseFloat(getComputedStyle(document.documentElement).scrollPaddingTop) || 0;
  const free = { top, bottom: isOver ? bar.top : above };
  const by = scrollToShow(field.getBoundingClientRect(), bands, free);
  if (by === 0) return;
  // At once: the next key may come before a smooth movement ends.
  const { style } = document.documentElement;
  style.scrollBehavior = 'auto';
  scrollBy(0, by);
  style.scrollBehavior = '';
}
