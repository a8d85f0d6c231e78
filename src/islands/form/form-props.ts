import { enterMovesOn } from './next-question.ts';

/**
 * What every form does. Its entries are in the state that is judged, and nowhere else: the browser is to fill in
 * nothing by itself (`autocomplete`), and some browsers reset such a form when a page comes back from their cache.
 */
export const formProps = {
  noValidate: true,
  autocomplete: 'off',
  onSubmit: (event: Event) => event.preventDefault(),
  onReset: (event: Event) => event.preventDefault(),
  onKeyDown: enterMovesOn,
} as const;
