/** The menu works as a fold by itself; with script it also closes by Escape and by a press beside it. */
export function closeMenuOutside(menu: HTMLDetailsElement): void {
  document.addEventListener('pointerdown', ({ target }) => {
    if (target instanceof Node && !menu.contains(target)) menu.open = false;
  });
  menu.addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || !menu.open) return;
    menu.open = false;
    menu.querySelector('summary')?.focus();
  });
}
