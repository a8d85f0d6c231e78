import { h, render } from 'preact';
import { CallApp } from './CallApp.tsx';

const place = document.querySelector<HTMLElement>('[data-call]');
if (place !== null) {
  // The fragment names the call, so the skip link must not change it.
  document.querySelector('.skip-link')?.addEventListener('click', (event) => {
    event.preventDefault();
    document.getElementById('content')?.focus();
  });
  place.replaceChildren();
  render(h(CallApp, {}), place);
  place.dataset.live = '';
}
