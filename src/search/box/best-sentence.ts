import type { PagefindPage } from './pagefind.ts';

/** A part of a sentence; marked if it is a word of the query. */
export interface Part {
  text: string;
  marked: boolean;
}

export interface Found {
  sentence: Part[];
  /** The heading above the sentence, if there is one. */
  heading?: { title: string; url: string };
}

/** A sentence that says something alone: cells of tables and parts of lists do not. */
const whole = /^[“"‘(]?[\p{Lu}\p{N}].{20,}[.!?][”"’)]?$/u;

/** Letters from which a sentence is too long for a list of answers. */
const tooLong = 150;

/**
 * The whole sentence of a page that contains the most words of a query, from the part of the page that says most about
 * them. `words` are in lower case.
 */
export function bestSentence(page: PagefindPage, words: readonly string[]): Found {
  const starts = words.filter((word) => word.length > 1).map((word) => word.slice(0, Math.max(4, word.length - 2)));
  const all = sectionsOf(page);
  const telling = all.filter(({ text }) => sentencesOf(text).some((sentence) => whole.test(sentence)));
  const sections = telling.length > 0 ? telling : all;
  // A word that few parts of the page contain tells more.
  const wanted = starts.map((start) => {
    const parts = sections.filter(({ text }) => wordStart(start).test(text)).length;
    return { start: wordStart(start), weight: 1 / Math.max(1, parts) };
  });
  const score = (text: string) => wanted.reduce((sum, { start, weight }) => sum + (start.test(text) ? weight : 0), 0);
  const times = (text: string) =>
    wanted.reduce((sum, { start, weight }) => sum + weight * text.split(start).length, 0) / 20;
  const section = best(sections, ({ text, heading }) => score(text) + times(text) + score(heading?.title ?? ''));
  const sentences = section ? wholeSentences(section.text) : [];
  const sentence = best(sentences, (text) => score(text) - (text.length > tooLong ? 0.5 : 0)) ?? '';
  const parts = sentence.split(/(\s+)/).map((text) => ({ text, marked: wanted.some(({ start }) => start.test(text)) }));
  return { sentence: parts, ...(section?.heading && { heading: section.heading }) };
}

/** The first one with the highest score. */
function best<One>(all: readonly One[], scoreOf: (one: One) => number): One | undefined {
  const scores = all.map(scoreOf);
  return all[scores.indexOf(Math.max(...scores))];
}

const wordStart = (start: string) =>
  new RegExp(`(?:^|[^\\p{L}\\p{N}])${start.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`, 'iu');

interface Section {
  text: string;
  heading?: { title: string; url: string };
}

/** The text of a page by its headings, without the headings themselves and without the words for the index only. */
function sectionsOf({ url, content, meta, anchors }: PagefindPage): Section[] {
  const words = content.split(/\s+/);
  const headings = anchors.filter(({ element }) => /^h[1-6]$/.test(element)).sort((a, b) => a.location - b.location);
  const sections: Section[] = [{ text: words.slice(0, headings[0]?.location).join(' ') }];
  headings.forEach(({ id, text, location }, index) => {
    sections.push({
      text: without(words.slice(location, headings[index + 1]?.location).join(' '), text),
      heading: { title: text, url: `${url}#${id}` },
    });
  });
  const title = meta.title ?? meta.term ?? meta.row ?? '';
  const [intro = { text: '' }, ...rest] = sections;
  for (const index of [meta.words, meta.also, title, meta.figure]) intro.text = without(intro.text, index);
  return [intro, ...rest];
}

/** A text without the words with which it begins. */
function without(text: string, start = ''): string {
  const plain = start.trim().replace(/\s+/g, ' ');
  return text.startsWith(plain) ? text.slice(plain.length).replace(/^[\s.]+/, '') : text;
}

/** The sentences of a text. */
const sentencesOf = (text: string) =>
  (text.match(/.+?(?:[.!?]["”’)]?(?=\s)|$)\s*/g) ?? []).map((sentence) => sentence.trim());

/** The whole sentences of a text, or all its parts if none is whole. */
function wholeSentences(text: string): string[] {
  const all = sentencesOf(text);
  const some = all.filter((sentence) => whole.test(sentence));
  return some.length > 0 ? some : all;
}
