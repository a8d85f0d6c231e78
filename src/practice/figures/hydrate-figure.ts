import { h, hydrate } from 'preact';
import { FigureView } from './FigureView.tsx';
import type { SimulatedFigure } from './simulated-figure.ts';

/** Takes over what the server has drawn. In a file of its own, so that a page loads the framework only for a figure in sight. */
export function hydrateFigure(figure: SimulatedFigure<unknown>, element: HTMLElement): void {
  hydrate(h(FigureView, { figure }), element);
  element.dataset.live = '';
}
