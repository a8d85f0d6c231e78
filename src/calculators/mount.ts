import { type ComponentType, h, hydrate } from 'preact';
import { shownTime } from '../kernel/time/iso-time.ts';
import { typedBeforeScript } from '../ui/form/form-start.ts';
import { keptEntries } from '../ui/form/kept-entries.ts';
import type { CalculatorProps } from '../ui/form/use-form.ts';

const components = import.meta.glob<ComponentType<CalculatorProps>>('./*/Calculator.tsx', { import: 'Calculator' });

/** Hydrates a server-rendered form with what was typed into it before. */
async function mount(element: HTMLElement): Promise<void> {
  const name = element.dataset.island ?? '';
  const load = components[`./${name}/Calculator.tsx`];
  if (load === undefined) throw new Error(`no calculator ${name}`);
  const calculator = await load();
  // In a task of its own: on a slow tablet two short waits disturb less than a long one.
  await new Promise((go) => setTimeout(go));
  // Read only now: the person may have been typing while the script loaded.
  const kept = keptEntries(name);
  const start = { ...kept?.typed, ...typedBeforeScript(element) };
  const visits: CalculatorProps['visits'] = JSON.parse(element.dataset.visits ?? '[]');
  hydrate(
    h(calculator, { visits, start, ...(kept && { kept: { since: shownTime(kept.at), outdated: kept.outdated } }) }),
    element,
  );
  element.dataset.live = '';
}

/** Each form once: when it scrolls near the window, is touched, or when the page is idle. */
function mountSoon(element: HTMLElement): void {
  let begun = false;
  const begin = () => {
    if (begun) return;
    begun = true;
    near.disconnect();
    void mount(element);
  };
  const near = new IntersectionObserver((entries) => entries.some((e) => e.isIntersecting) && begin(), {
    rootMargin: '300px',
  });
  near.observe(element);
  for (const event of ['focusin', 'pointerdown']) element.addEventListener(event, begin, { once: true });
  if ('requestIdleCallback' in window) requestIdleCallback(begin, { timeout: 4000 });
  else setTimeout(begin, 1000);
}

for (const element of document.querySelectorAll<HTMLElement>('[data-island]')) mountSoon(element);
