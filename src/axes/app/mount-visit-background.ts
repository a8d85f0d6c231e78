import { provideBackground, provideKnownAxes } from '../../visit/app/background.ts';

// Loaded when a visit is opened, so that the list of visits does not wait for it.
const load = () => import('./visit-background.ts');

provideBackground((visit) =>
  load().then(
    ({ visitBackground }) => visitBackground(visit),
    () => undefined,
  ),
);

provideKnownAxes(() =>
  load().then(
    ({ knownAxes }) => knownAxes(),
    () => [],
  ),
);

// Early all the same: when a visit is opened there may be no network.
(window.requestIdleCallback ?? setTimeout)(() => void load().catch(() => undefined));
