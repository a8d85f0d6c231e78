import { globSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { formatLimit } from '../../kernel/words/format-limit.ts';
import type { Term } from '../../library/glossary/glossary-schema.ts';
import type { Limit } from '../../library/tables/limit-schema.ts';
import { figureWords, withPlainUnits } from '../box/unit-spellings.ts';
import { nameOf } from '../box/whole-names.ts';
import { askedMeaning } from '../box/words.ts';

const root = join(import.meta.dirname, '../../..');

/** A part of a page that is a search result of its own: its address and a page made from its words. */
interface SearchRecord {
  url: string;
  content: string;
}

/** Glossary and tables have about a hundred short answers each: each entry is a result, not its page. */
export function searchRecords(): SearchRecord[] {
  return [...glossaryRecords(), ...limitRecords()];
}

function glossaryRecords(): SearchRecord[] {
  return filesOf<Record<string, Term>>('glossary').flatMap((file) =>
    Object.entries(file).map(([id, { term, otherWords, alsoInText = [], definition }]) => ({
      url: `/glossary/#${id}`,
      content: page({
        kind: 'term',
        title: term,
        names: [term, ...otherWords],
        otherWords: [...otherWords, ...alsoInText, askedMeaning],
        paragraphs: [definition],
      }),
    })),
  );
}

function limitRecords(): SearchRecord[] {
  const sources = JSON.parse(readFileSync(join(root, 'content/sources/sources.json'), 'utf8'));
  return filesOf<{ title: string; limits: Record<string, Limit> }>('limits').flatMap(({ title, limits }) =>
    Object.entries(limits).map(([id, limit]) => {
      const figure = formatLimit(limit);
      const named = [title, id.replaceAll('-', ' '), sources[limit.source ?? '']?.short ?? '', 'limit', 'table'];
      const figures = limit.value === undefined && limit.range === undefined ? [] : figureWords(withPlainUnits(figure));
      return {
        url: `/tables/#${id}`,
        content: page({
          kind: 'row',
          title: limit.label,
          figure,
          names: [limit.label, id, `${id} limit`, ...(limit.otherWords ?? [])],
          otherWords: [...named, ...figures, ...(limit.otherWords ?? [])],
          paragraphs: [limit.when, limit.note ?? ''],
          weight: weightOf(id),
        }),
      };
    }),
  );
}

/** People search more for a limit that the articles name often. */
function weightOf(id: string): number {
  return Math.min(3, 1 + (timesNamed.get(id) ?? 0) / 5);
}

const timesNamed = new Map<string, number>();
for (const file of globSync('content/articles/**/*.mdx', { cwd: root })) {
  for (const [, id = ''] of readFileSync(join(root, file), 'utf8').matchAll(/<Limit id="([^"]*)"/g))
    timesNamed.set(id, (timesNamed.get(id) ?? 0) + 1);
}

function filesOf<Content>(kind: string): Content[] {
  const folder = join(root, 'content', kind);
  return readdirSync(folder).map((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')));
}

interface RecordParts {
  /** Names the metadata field of the heading, so that a short record does not outrank the page that explains it. */
  kind: 'term' | 'row';
  title: string;
  /** Shown beside the heading. */
  figure?: string;
  /** What somebody types who means exactly this. */
  names: readonly string[];
  otherWords: readonly string[];
  paragraphs: readonly string[];
  weight?: number;
}

function page({ kind, title, figure = '', names, otherWords, paragraphs, weight = 1 }: RecordParts): string {
  const words = escaped(otherWords.join(', '));
  const meta = `${kind}, also[data-w], names[data-names]${figure && ', figure[data-figure]'}`;
  const text = [figure, ...paragraphs].map((paragraph) => `<p>${escaped(paragraph)}</p>`).join('');
  return (
    `<!doctype html><html lang="en"><body data-pagefind-body>` +
    `<h4 data-w="${words}" data-names="${names.map(nameOf).join(' ')}" data-figure="${escaped(figure)}" ` +
    `data-pagefind-meta="${meta}" data-pagefind-index-attrs="data-w">${escaped(title)}</h4>` +
    `<div data-pagefind-weight="${weight}">${text}</div></body></html>`
  );
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string) => text.replace(/[&<>"]/g, (sign) => entities[sign] ?? sign);
