import type { LibraryHit, LibraryPage } from './library.ts';

export interface Answer {
  url: string;
  title: string;
  excerpt: string;
  /** The headings under which the words stand, the one that answers best first. */
  headings: { title: string; url: string; excerpt: string }[];
}

/** Headings shown for one page. */
const mostHeadings = 4;

interface Scored {
  title: string;
  url: string;
  excerpt: string;
  score: number;
  best: number;
}

/** One page of the list, from what the library says of it for each word of the query. */
export async function answerOf(hits: readonly LibraryHit[]): Promise<Answer> {
  const headings = new Map<string, Scored>();
  let page: LibraryPage | undefined;
  for (const hit of hits) {
    // One after the other, and read at once: the library keeps one object a page and writes each word's answer into it.
    page = await hit.data();
    for (const heading of page.sub_results) add(headings, heading);
  }
  if (!page) throw new Error('an answer without a hit');
  const { url, meta } = page;
  const own = [...headings.values()].sort((a, b) => b.score - a.score);
  return {
    url,
    title: meta.title ?? meta.term ?? meta.row ?? url,
    excerpt: page.excerpt,
    headings: own
      .filter((heading) => heading.url !== url)
      .slice(0, mostHeadings)
      .map(({ title, url, excerpt }) => ({ title, url, excerpt })),
  };
}

/** Roots, so that a heading with all the words comes before one that repeats a single word. */
function add(
  headings: Map<string, Scored>,
  { title, url, excerpt, weighted_locations }: LibraryPage['sub_results'][0],
) {
  const score = Math.sqrt(weighted_locations.reduce((sum, { balanced_score }) => sum + balanced_score, 0));
  const known = headings.get(url);
  if (!known) headings.set(url, { title, url, excerpt, score, best: score });
  else {
    known.score += score;
    if (score > known.best) Object.assign(known, { excerpt, best: score });
  }
}
