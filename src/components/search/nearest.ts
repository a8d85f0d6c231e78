import { slips } from './spelling.ts';

/** A title, a term or another word for one, and the address that it leads to. */
export type KnownTerm = [text: string, url: string];

/** Terms offered where nothing was found. */
const mostOffered = 5;

/** The terms that are spelt most like a query, each address once, nearest first; none that is as good as foreign to it. */
export function nearestTerms(query: string, terms: readonly KnownTerm[]): KnownTerm[] {
  const wanted = query.toLowerCase().trim();
  const near = terms
    .map((term) => ({ term, distance: distance(wanted, term[0].toLowerCase()) }))
    .filter((one) => one.distance <= 0.6)
    .sort((a, b) => a.distance - b.distance);
  const first = new Map<string, KnownTerm>();
  for (const { term } of near) if (!first.has(term[1])) first.set(term[1], term);
  return [...first.values()].slice(0, mostOffered);
}

/** Slips per letter, against the whole text or the nearest of its words. */
function distance(wanted: string, text: string): number {
  const share = (part: string) => slips(wanted, part) / Math.max(wanted.length, part.length, 1);
  // A single word of a longer text tells less than the whole.
  return Math.min(share(text), ...text.split(/[\s,/()]+/).map((word) => share(word) + 0.05));
}
