import { h, render } from 'preact';
import { VisitApp } from './VisitApp.tsx';

const place = document.querySelector<HTMLElement>('[data-visit]');
if (place !== null) {
  // The fragment names the visit: going to the content must not take it away.
  document.querySelector('.skip-link')?.addEventListener('click', (event) => {
    event.preventDefault();
    document.getElementById('content')?.focus();
  });
  // By the time that a face is first needed there may be no network.
  for (const face of document.fonts) void face.load().catch(() => undefined);
  place.replaceChildren();
  render(h(VisitApp, {}), place);
}
