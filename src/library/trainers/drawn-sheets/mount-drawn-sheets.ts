import { h, render } from 'preact';
import { DrawnSheets } from './DrawnSheets.tsx';
import type { SectionQuestions } from './section-sheets.ts';

const place = document.querySelector<HTMLElement>('[data-drawn-sheets]');
if (place !== null) {
  // Written by the page at build, from content/exercises that the schema has checked.
  const section = JSON.parse(place.dataset.drawnSheets ?? '') as SectionQuestions;
  place.replaceChildren();
  render(h(DrawnSheets, { section }), place);
  place.dataset.live = '';
}
