import type { Photograph } from '../../record/photograph.ts';
import { askBeforeClosing } from '../ask-before-closing.ts';

/** Photographs that could not be stored, by visit. They stay in this window when the view changes. */
const held = new Map<string, Photograph[]>();

/** Pictures that are being scaled down and not stored yet. */
let inWork = 0;

export const heldPhotographs = (visit: string): readonly Photograph[] => held.get(visit) ?? [];

/** Keeps a photograph in this window, or its newer caption. */
export function holdPhotograph(visit: string, photograph: Photograph): void {
  held.set(visit, [...heldPhotographs(visit).filter(({ id }) => id !== photograph.id), photograph]);
  guard();
}

export function releasePhotograph(visit: string, id: string): void {
  held.set(
    visit,
    heldPhotographs(visit).filter((one) => one.id !== id),
  );
  guard();
}

/** Lets go of all of a visit, and returns them. */
export function releasePhotographs(visit: string): readonly Photograph[] {
  const all = heldPhotographs(visit);
  held.delete(visit);
  guard();
  return all;
}

/** Runs `work` on a picture; meanwhile the browser asks before it closes the window. */
export async function guarded<T>(work: () => Promise<T>): Promise<T> {
  inWork += 1;
  guard();
  try {
    return await work();
  } finally {
    inWork -= 1;
    guard();
  }
}

/** Listens only while something would be lost: a page with such a listener is not kept for "back". */
function guard(): void {
  const atRisk = inWork > 0 || [...held.values()].some((list) => list.length > 0);
  if (atRisk) addEventListener('beforeunload', askBeforeClosing);
  else removeEventListener('beforeunload', askBeforeClosing);
}
