import { globSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { close, createIndex, type HTMLFile } from 'pagefind';
import type { SiteWords } from '../box/site-words.ts';
import { nameOf } from '../box/whole-names.ts';
import { askedMeaning } from '../box/words.ts';
import { searchRecords } from './search-records.ts';

/** Ready-made search boxes of Pagefind; this site has its own. */
const readyMade = /^pagefind-(ui|modular-ui|component-ui|highlight)\./;

/** The texts of the results are in at most this many files, since the device fetches each of them. */
const maxFragments = 120;

/**
 * Writes Pagefind's index of the finished pages into the built folder, and the words of the site beside it. Returns the
 * number of possible answers.
 */
export async function writeSearchIndex(folder: string): Promise<number> {
  const { index, errors } = await createIndex({ maxFragments });
  if (!index) throw new Error(errors.join('\n'));
  const sources = [...searchRecords(), ...pagesOf(folder)];
  const added = await Promise.all(sources.map((source) => index.addHTMLFile(source)));
  const written = await index.getFiles();
  await close();
  const problems = [...added, written].flatMap((part) => part.errors);
  if (problems.length > 0) throw new Error(problems.join('\n'));
  for (const { path, content } of written.files) {
    if (readyMade.test(path)) continue;
    const target = join(folder, 'pagefind', path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content);
  }
  const found = added.map(({ file }) => file.meta);
  const counts = frequentFirst([
    ...sources.map(({ content }) => textOf(content)),
    ...found.flatMap(({ names: _, toolNames: __, ...meta }) => Object.values(meta)),
  ]);
  const words: SiteWords = {
    words: counts.map(([word]) => word),
    frequent: counts.filter(([, count]) => count >= 3).length,
    terms: [...new Set(found.flatMap(termsOf))],
  };
  writeFileSync(join(folder, 'search-words.json'), JSON.stringify(words));
  return added.length;
}

/** They would read as the beginning of a sentence. */
const tableHeads = /<thead\b.*?<\/thead>/gs;

/** The pages that are marked as searchable. */
function pagesOf(folder: string): HTMLFile[] {
  return globSync('**/*.html', { cwd: folder })
    .sort()
    .map((sourcePath) => ({ sourcePath, content: readFileSync(join(folder, sourcePath), 'utf8') }))
    .filter(({ content }) => content.includes(' data-pagefind-body'))
    .map(({ sourcePath, content }) => ({
      sourcePath,
      content: withNames(sourcePath, content.replace(tableHeads, '')),
    }));
}

/** A page whose title and other words are also in the index as whole names. An article comes before a calculator. */
function withNames(path: string, page: string): string {
  const kind = path.startsWith('calculators/') ? 'toolNames' : 'names';
  return page.replace(
    /<h1 data-other-words="([^"]*)"([^>]*) data-pagefind-meta="([^"]*)"([^>]*)>([^<]*)/,
    (_, words: string, before: string, meta: string, after: string, title: string) => {
      const names = [title, ...words.split(', ')].map(plainText).map(nameOf).join(' ');
      return `<h1 data-other-words="${words}" data-names="${names}"${before} data-pagefind-meta="${meta}, ${kind}[data-names]"${after}>${title}`;
    },
  );
}

const plainText = (html: string) => html.replace(/&[#\w]+;/g, (sign) => (sign === '&amp;' ? '&' : ' '));

/** Rough text of the searchable part of a page: only single words are taken from it. */
const textOf = (page: string) =>
  page.replace(/^.* data-pagefind-body[^>]*>|<\/main>.*$|<(script|style)\b.*?<\/\1>|<[^>]*>|&[#\w]+;/gs, ' ');

/** The words of all texts, the most frequent first: for recognising typing mistakes. */
function frequentFirst(texts: readonly string[]): [word: string, count: number][] {
  const counts = new Map<string, number>();
  for (const text of texts)
    for (const word of text.toLowerCase().match(/(?<![\p{L}\d])\p{L}{4,}(?![\p{L}\d])/gu) ?? [])
      counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a);
}

/** Titles, terms and other words: offered by similar spelling if a search finds nothing. */
function termsOf(meta: Record<string, string>): string[] {
  const others = [meta.words, meta.term && meta.also].flatMap((list) => list?.split(', ') ?? []);
  const terms = [meta.title ?? meta.term ?? meta.row ?? '', ...others];
  return terms.filter((term) => term !== '' && term !== askedMeaning);
}
