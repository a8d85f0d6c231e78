import { type CollectionEntry, getCollection } from 'astro:content';
import { memoPerBuild } from '../../site/memo-per-build.ts';
import { href } from '../../ui/href.ts';
import { sections } from './sections.ts';

export type ArticleEntry = CollectionEntry<'articles'>;

/**
 * Every article, by section and then by its place in the section. A build sorts them once, since every page asks for
 * them.
 */
export const articlesInOrder = memoPerBuild(async (): Promise<readonly ArticleEntry[]> => {
  const rank = (article: ArticleEntry) => sections.findIndex(({ id }) => id === article.data.section);
  const articles = await getCollection('articles');
  return articles.sort((a, b) => rank(a) - rank(b) || a.data.order - b.data.order);
});

export function articleHref(id: string): string {
  return href(`/articles/${id}/`);
}
