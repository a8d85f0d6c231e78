import { h, render } from 'preact';
import { fetchKeypad } from '../../ui/keypad/LateKeypad.tsx';
import { VisitApp } from './VisitApp.tsx';

/** Modules that a form loads with its first verdict, or with the first touch of a field. */
const late: (() => Promise<unknown>)[] = [
  () => import('../../calculators/insulation/InsulationPlot.tsx'),
  () => import('../../calculators/isolation/PartsStrip.tsx'),
  () => import('../../calculators/winding/WindingBars.tsx'),
  fetchKeypad,
];

/** Lets each piece of work run in its own task: on a slow tablet several short delays are less noticeable than a long one. */
const nextTask = () => new Promise((go) => setTimeout(go));

async function mount(place: HTMLElement): Promise<void> {
  // The fragment names the visit, so the skip link must not change it.
  document.querySelector('.skip-link')?.addEventListener('click', (event) => {
    event.preventDefault();
    document.getElementById('content')?.focus();
  });
  await nextTask();
  place.replaceChildren();
  render(h(VisitApp, {}), place);
  place.dataset.live = '';
  (window.requestIdleCallback ?? setTimeout)(fetchLate);
}

/** Loads typefaces and drawings early: when they are first needed there may be no network. */
async function fetchLate(): Promise<void> {
  for (const face of document.fonts) void face.load().catch(() => undefined);
  for (const fetch of late) {
    await fetch().catch(() => undefined);
    await nextTask();
  }
}

const place = document.querySelector<HTMLElement>('[data-visit]');
if (place !== null) void mount(place);
