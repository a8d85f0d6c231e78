import { provideBackground } from '../../visit/app/background.ts';

// Loaded when a visit is opened, so that the list of visits does not wait for it.
provideBackground((visit) =>
  import('./visit-background.ts').then(
    ({ visitBackground }) => visitBackground(visit),
    () => undefined,
  ),
);
