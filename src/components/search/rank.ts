/** One answer to one word, as the search library scores it. */
export interface WordHit {
  id: string;
  score: number;
}

/** What an answer gains by holding a figure with its unit, or a definition where one is asked for. */
const gain = 2;

/** Answers below this share of the best score hold one of several words by chance. */
const leastShare = 0.08;

/**
 * Answers to several words, best first: an answer that lacks a word is not lost, as it would be where all must stand on
 * one page, but each missing word costs. `extras` bring the answers forward that hold them.
 */
export function ranked(words: readonly (readonly WordHit[])[], extras: readonly (readonly WordHit[])[]): WordHit[] {
  const sums = new Map<string, { score: number; words: number }>();
  for (const { id, score } of words.flat()) {
    const sum = sums.get(id);
    sums.set(id, { score: (sum?.score ?? 0) + score, words: (sum?.words ?? 0) + 1 });
  }
  const gained = new Set(extras.flat().map(({ id }) => id));
  const scored = [...sums].map(([id, sum]) => ({
    id,
    score: sum.score * (sum.words / words.length) ** 2 * (gained.has(id) ? gain : 1),
  }));
  scored.sort((a, b) => b.score - a.score);
  const least = (scored[0]?.score ?? 0) * leastShare;
  return scored.filter(({ score }) => score > least);
}
