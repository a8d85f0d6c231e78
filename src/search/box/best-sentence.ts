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

/** Letters from which a sentence says enough alone, and above which it is too long for a list of answers. */
const enough = 40;
const tooLong = 170;

/**
 * The whole sentence of a page that contains the most words of a query, from the part of the page that says most about
 * them. `words` are in lower case.
 */
export function bestSentence(page: PagefindPage, words: readonly string[]): Found {
  const starts = words.filter((word) => word.length > 1).map((word) => word.slice(0, Math.max(4, word.length - 2)));
  const sections = sectionsOf(page);
  // A word that few parts of the page contain tells more.
  const wanted = starts.map((start) => {
    const parts = sections.filter(({ text }) => wordStart(start).test(text)).length;
    return { start: wordStart(start), weight: 1 / Math.max(1, parts) };
  });
  const score = (text: string) => wanted.reduce((sum, { start, weight }) => sum + (start.test(text) ? weight : 0), 0);
  const times = (text: string) =>
    wanted.reduce((sum, { start, weight }) => sum + weight * text.split(start).length, 0) / 20;
  const section = best(sections, ({ text, heading }) => score(text) + times(text) + score(heading?.title ?? ''));
  const sentences = section ? sentencesOf(section.text) : [];
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
  const words = content.split(/[\r\n\s]+/);
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
const without = (text: string, start = '') =>
  text.startsWith(start) ? text.slice(start.length).replace(/^[\s.]+/, '') : text;

/** Sentences; short ones, like the cells of a table, together with the next. */
function sentencesOf(text: string): string[] {
  const sentences: string[] = [];
  let open = '';
  for (const sentence of text.match(/.+?(?:[.!?:]["”’)]?(?=\s)|$)\s*/g) ?? []) {
    open += sentence;
    if (open.length < enough) continue;
    sentences.push(open.trim());
    open = '';
  }
  if (open.trim() !== '') sentences.push(open.trim());
  return sentences;
}
