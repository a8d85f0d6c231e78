import { type ComponentType, h, hydrate } from 'preact';
import { shownTime } from '../kernel/time/iso-time.ts';
import { typedBeforeScript } from '../ui/form/form-start.ts';
import { keptEntries } from '../ui/form/kept-entries.ts';
import type { CalculatorProps } from '../ui/form/use-form.ts';

const components = import.meta.glob<ComponentType<CalculatorProps>>('./*/Calculator.tsx', { import: 'Calculator' });

/** Brings a server-rendered form to life, with what was typed into it before. */
async function mount(element: HTMLElement): Promise<void> {
  const name = element.dataset.island ?? '';
  const load = components[`./${name}/Calculator.tsx`];
  if (load === undefined) throw new Error(`no calculator ${name}`);
  const calculator = await load();
  // In a task of its own: two short waits are felt less on a slow tablet than a long one.
  await new Promise((go) => setTimeout(go));
  // Read after the script has come: until this line the person may have been typing.
  const kept = keptEntries(name);
  const start = { ...kept?.typed, ...typedBeforeScript(element) };
  const visits: CalculatorProps['visits'] = JSON.parse(element.dataset.visits ?? '[]');
  hydrate(
    h(calculator, { visits, start, ...(kept && { kept: { since: shownTime(kept.at), outdated: kept.outdated } }) }),
    element,
  );
  element.dataset.live = '';
}

/** Each form once: when it comes near the window, is touched, or when the page has nothing else to do. */
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
