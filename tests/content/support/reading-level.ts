import { typedProse } from './article-text.ts';

export interface ReadingLevel {
  sentences: number;
  /** Words in a sentence, on average. */
  average: number;
  longest: { words: number; sentence: string };
  /** Share of sentences of more than twenty-five words, in percent. */
  longShare: number;
  /** Flesch's reading ease (1948, formula recalled): 60 to 70 is plain English, below 50 is difficult. */
  ease: number;
}

/** Running text of an article as sentences: list items and paragraphs end one, tables and headings don't count. */
export function sentencesOf(article: string): string[] {
  const blocks = typedProse(article.replace(/<(?:Limit|Cite)\b[^>]*>/g, '{figure}'))
    .replace(/<[^>]*>/g, ' ')
    .split(/\n\s*\n|\n(?=\s*(?:[-*]|\d+\.) )/)
    .filter((block) => !/^\s*(?:#|\|)/.test(block))
    .map((block) =>
      block
        .replace(/^\s*(?:[-*]|\d+\.) /, '')
        .replace(/[*_`]|\[([^\]]*)\]\([^)]*\)/g, '$1')
        .replace(/\s+/g, ' '),
    );
  return blocks
    .flatMap((block) => block.split(/(?<=[.!?:;]["”)]?) (?=[\p{Lu}"“…\d])/u))
    .map((sentence) => sentence.trim())
    .filter((sentence) => wordsOf(sentence).length > 1);
}

/** "…" replaces a figure and counts as one word. */
function wordsOf(sentence: string): string[] {
  return sentence.match(/[\p{L}\p{N}][\p{L}\p{N}'’.,/-]*|…/gu) ?? [];
}

/** Groups of vowels minus a mute e: an estimate, like the formula. */
function syllables(word: string): number {
  const groups = word
    .toLowerCase()
    .replace(/(?<=[^aeiouy]{1,3})e(?:s|d)?$/, '')
    .match(/[aeiouy]+/g);
  return Math.max(1, groups?.length ?? 1);
}

export function readingLevel(article: string): ReadingLevel {
  const sentences = sentencesOf(article);
  const counts = sentences.map((sentence) => ({ words: wordsOf(sentence).length, sentence }));
  const words = sentences.flatMap(wordsOf);
  const average = words.length / sentences.length;
  const perWord = words.reduce((sum, word) => sum + syllables(word), 0) / words.length;
  return {
    sentences: sentences.length,
    average,
    longest: counts.reduce((longest, one) => (one.words > longest.words ? one : longest)),
    longShare: (counts.filter((one) => one.words > 25).length / counts.length) * 100,
    ease: 206.835 - 1.015 * average - 84.6 * perWord,
  };
}
