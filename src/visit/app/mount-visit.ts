import { h, render } from 'preact';
import { VisitApp } from './VisitApp.tsx';

/** What the calculators load with their first verdict. */
const late: (() => Promise<unknown>)[] = [
  () => import('../../calculators/insulation/InsulationPlot.tsx'),
  () => import('../../calculators/isolation/PartsStrip.tsx'),
  () => import('../../calculators/winding/WindingBars.tsx'),
];

/** Each piece of work in a task of its own: short waits are felt less on a slow tablet than a long one. */
const nextTask = () => new Promise((go) => setTimeout(go));

async function mount(place: HTMLElement): Promise<void> {
  // The fragment names the visit: going to the content must not take it away.
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

/** By the time that a face or a drawing is first needed there may be no network. */
async function fetchLate(): Promise<void> {
  for (const face of document.fonts) void face.load().catch(() => undefined);
  for (const fetch of late) {
    await fetch().catch(() => undefined);
    await nextTask();
  }
}

const place = document.querySelector<HTMLElement>('[data-visit]');
if (place !== null) void mount(place);
