/** Answers below this share of the best score contain one of several words by chance. */
const minShare = 0.08;

/**
 * Answers to several words, best first, from a list of scored answers to each word. Pagefind itself drops every page
 * that lacks one of several words; here each missing word only lowers the score. Each answer is the hit of its best
 * word.
 */
export function ranked<Hit extends { id: string; score: number }>(words: readonly (readonly Hit[])[]): Hit[] {
  const sums = new Map<string, { hit: Hit; score: number; words: number }>();
  for (const hit of words.flat()) {
    const sum = sums.get(hit.id) ?? { hit, score: 0, words: 0 };
    sums.set(hit.id, {
      hit: hit.score > sum.hit.score ? hit : sum.hit,
      score: sum.score + hit.score,
      words: sum.words + 1,
    });
  }
  const scored = [...sums.values()].map(({ hit, score, words }) => ({ hit, score: score * words ** 2 }));
  scored.sort((a, b) => b.score - a.score);
  const least = (scored[0]?.score ?? 0) * minShare;
  return scored.filter(({ score }) => score > least).map(({ hit }) => hit);
}
