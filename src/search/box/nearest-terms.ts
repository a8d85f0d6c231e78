import { editDistance } from './spelling.ts';

/** Terms offered if nothing was found. */
const mostOffered = 5;

/** Edits per letter from which a term is too different to be offered. */
const maxDistance = 0.6;

/** The terms whose spelling is nearest to a query, nearest first. */
export function nearestTerms(query: string, terms: readonly string[]): string[] {
  const wanted = query.toLowerCase().trim();
  const near = terms
    .map((term) => ({ term, distance: distance(wanted, term.toLowerCase()) }))
    .filter((one) => one.distance < maxDistance)
    .sort((a, b) => a.distance - b.distance);
  return near.slice(0, mostOffered).map(({ term }) => term);
}

/** Edits per letter, against the whole term or the nearest of its words. */
function distance(wanted: string, term: string): number {
  const share = (part: string) => editDistance(wanted, part) / Math.max(wanted.length, part.length, 1);
  // A single word of a longer term is a weaker match than the whole.
  return Math.min(share(term), ...term.split(/[\s,/()]+/).map((word) => share(word) + 0.05));
}
