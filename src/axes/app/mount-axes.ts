import { h, render } from 'preact';
import { AxesApp } from './AxesApp.tsx';

const place = document.querySelector<HTMLElement>('[data-axes]');
if (place !== null) {
  place.replaceChildren();
  render(h(AxesApp, {}), place);
  place.dataset.live = '';
}
