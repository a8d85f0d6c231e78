import type { SimulatedFigure } from './simulated-figure.ts';

const figures = import.meta.glob<SimulatedFigure<unknown>>('./*/figure.tsx', { import: 'figure' });

/** Brings a figure to life that the server has drawn. Its script comes only now, the framework’s too. */
async function mount(element: HTMLElement): Promise<void> {
  const name = element.dataset.figure ?? '';
  const load = figures[`./${name}/figure.tsx`];
  if (load === undefined) throw new Error(`no figure ${name}`);
  const [figure, { hydrateFigure }] = await Promise.all([load(), import('./hydrate-figure.ts')]);
  hydrateFigure(figure, element);
}

/** Each figure once, when it scrolls near the window: most of them are in a fold that few readers open. */
for (const element of document.querySelectorAll<HTMLElement>('[data-figure]')) {
  const near = new IntersectionObserver(
    (entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      near.disconnect();
      void mount(element);
    },
    { rootMargin: '300px' },
  );
  near.observe(element);
}
