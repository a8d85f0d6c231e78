import { h, render } from 'preact';
import { VisitApp } from './VisitApp.tsx';

const place = document.querySelector<HTMLElement>('[data-visit]');
if (place !== null) {
  // The fragment names the visit: going to the content must not take it away.
  document.querySelector('.skip-link')?.addEventListener('click', (event) => {
    event.preventDefault();
    document.getElementById('content')?.focus();
  });
  place.replaceChildren();
  render(h(VisitApp, {}), place);
}
