import { h, render } from 'preact';
import { PracticeApp } from './PracticeApp.tsx';

const place = document.querySelector<HTMLElement>('[data-practice]');
if (place !== null) {
  // The fragment names the case, so the skip link must not change it.
  document.querySelector('.skip-link')?.addEventListener('click', (event) => {
    event.preventDefault();
    document.getElementById('content')?.focus();
  });
  const articles: string[] = JSON.parse(place.dataset.articles ?? '[]');
  place.replaceChildren();
  render(h(PracticeApp, { articles }), place);
  place.dataset.live = '';
}
