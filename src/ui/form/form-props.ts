import { enterMovesOn } from './next-question.ts';

/**
 * What every form does. Its entries are in the state that is judged, and nowhere else. No `autocomplete="off"`: WebKit
 * takes such fields for secrets and empties them, some moments after a page has come back from its cache.
 */
export const formProps = {
  noValidate: true,
  onSubmit: (event: Event) => event.preventDefault(),
  onKeyDown: enterMovesOn,
} as const;
