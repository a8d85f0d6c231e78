import type { Term } from '../schemas/glossary.ts';

/** A term where it stands in a text. */
export interface Found {
  id: string;
  from: number;
  to: number;
}

export type TermFinder = (text: string, done: ReadonlySet<string>) => Found[];

/** What makes a term a part of a longer word where it stands right before it. */
const wordGoesOn = /[\p{L}\p{N}-]$/u;

/**
 * Finds the first use in a text of each term that is not `done` yet. The longest words win where terms overlap; only the
 * first letter may be large or small, so that OL is not found in "ol" and a sentence may begin with a term.
 */
export function termFinder(terms: Readonly<Record<string, Term>>): TermFinder {
  const idOf = new Map<string, string>();
  for (const [id, { term, alsoInText = [], linked = true }] of Object.entries(terms)) {
    if (linked) for (const words of [term, ...alsoInText]) idOf.set(withSmallStart(words), id);
  }
  if (idOf.size === 0) return () => [];
  const pattern = patternOf([...idOf.keys()]);
  return (text, done) => {
    const seen = new Set(done);
    const found: Found[] = [];
    pattern.lastIndex = 0;
    for (let match = pattern.exec(text); match; match = pattern.exec(text)) {
      const from = match.index;
      if (wordGoesOn.test(text.slice(Math.max(0, from - 2), from))) {
        pattern.lastIndex = from + 1;
        continue;
      }
      const id = idOf.get(withSmallStart(match[0].replaceAll(/\s/g, ' ')));
      if (id === undefined || seen.has(id)) continue;
      seen.add(id);
      found.push({ id, from, to: from + match[0].length });
    }
    return found;
  };
}

/**
 * Any of these words, the longest first, where no longer word begins with it. Sorted by their first letters, and without
 * a look behind, it passes most of a text ten times as fast: every article of every build is read by it.
 */
function patternOf(allWords: readonly string[]): RegExp {
  const groups = Object.entries(Object.groupBy(allWords, (words) => words.charAt(0))).map(([first, group = []]) => {
    const rests = group.map((words) => words.slice(1)).sort((a, b) => b.length - a.length);
    return `[${first}${first.toUpperCase()}](?:${rests.map(asPattern).join('|')})`;
  });
  return new RegExp(`(?:${groups.join('|')})(?![\\p{L}\\p{N}]|-\\p{L})`, 'gu');
}

function withSmallStart(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

const asPattern = (words: string) => words.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&').replaceAll(' ', '\\s');
