import { h, render } from 'preact';
import { ShopApp } from './ShopApp.tsx';

const place = document.querySelector<HTMLElement>('[data-shop]');
if (place !== null) {
  place.replaceChildren();
  render(h(ShopApp, {}), place);
  place.dataset.live = '';
}
