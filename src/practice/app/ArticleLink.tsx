import { href } from '../../ui/href.ts';
import { articleLinkText } from '../words/feedback.ts';

interface Props {
  /** Ids of articles, the closest first. */
  wanted: readonly string[] | undefined;
  /** Ids of the articles that the site has. */
  articles: readonly string[];
}

/** A link to the closest article that exists. */
export function ArticleLink({ wanted = [], articles }: Props) {
  const id = wanted.find((one) => articles.includes(one));
  if (id === undefined) return null;
  return <a href={href(`/articles/${id}/`)}>{articleLinkText(id)}</a>;
}
