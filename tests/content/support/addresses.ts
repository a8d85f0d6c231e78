import { basename } from 'node:path';
import Slugger from 'github-slugger';
import { calculatorNames } from '../../../src/calculators/registry.ts';
import { limitIds } from '../../../src/kernel/limits.ts';
import { attributesOf, splitArticle } from './article-text.ts';
import { filesOf, jsonOf } from './files.ts';

/** Parts of every article that the layout draws. */
const ofLayout = ['cannot-tell', 'questions', 'rests-on', 'related', 'on-this-page', 'content'];

/** Heading ids of an article, made like the site's Markdown processor does: from the words, without markup. */
function headingIds(text: string): string[] {
  const slugger = new Slugger();
  const headings = [...splitArticle(text).body.matchAll(/^#{2,4} (.+)$/gm)].map((match) => match[1] ?? '');
  return headings.map((heading) => slugger.slug(heading.replace(/<[^>]*>|[*`]/g, '').trim()));
}

/**
 * Pages of the site by path, with the ids that a link may name; null if ids are unknown without a build. Made from the
 * sources, so that broken links are found in seconds; the links of the built site are checked too.
 */
export function knownAddresses(): Map<string, string[] | null> {
  const known = new Map<string, string[] | null>();
  for (const { path } of filesOf('src/pages/**/*.astro')) {
    if (path.includes('[')) continue;
    const page = path.replace(/^src\/pages|\.astro$/g, '').replace(/\/index$/, '');
    known.set(`${page}/`, null);
  }
  for (const { path, text } of filesOf('content/articles/**/*.mdx')) {
    const id = path.replace(/^content\/articles\/|\.mdx$/g, '');
    const folds = [...attributesOf(text, 'Fold', 'id'), ...attributesOf(text, 'FormerAddress', 'id')];
    known.set(`/articles/${id}/`, [...headingIds(text), ...folds, ...ofLayout]);
  }
  for (const { path, data } of jsonOf('content/exercises/**/*.json')) {
    const id = path.replace(/^content\/exercises\/|\.json$/g, '');
    const { questions } = data as { questions: { id: string }[] };
    known.get(`/articles/${id}/`)?.push(...questions.map((question) => `question-${question.id}`));
  }
  for (const name of calculatorNames) known.set(`/calculators/${name}/`, null);
  for (const { path } of filesOf('content/cases/*.json')) known.set(`/cases/${basename(path, '.json')}/`, null);
  for (const { path } of filesOf('content/lessons/*.json')) known.set(`/lessons/${basename(path, '.json')}/`, null);
  known.set('/tables/', tableIds());
  known.set(
    '/glossary/',
    jsonOf('content/glossary/*.json').flatMap(({ data }) => Object.keys(data as object)),
  );
  known.set('/sources/', ['licence', ...Object.keys(jsonOf('content/sources/sources.json')[0]?.data as object)]);
  return known;
}

function tableIds(): string[] {
  const topics = filesOf('content/limits/*.json').map(({ path }) => `topic-${basename(path, '.json')}`);
  return ['statuses', 'topics', ...topics, ...limitIds, ...limitIds.map((id) => `${id}-points`)];
}
