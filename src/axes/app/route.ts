import { href } from '../../ui/href.ts';

/** The view that the address names, in its fragment. */
export type Route = { view: 'list' } | { view: 'axis'; id: string } | { view: 'new' };

/** Undefined for an anchor within the page: the view does not change. */
export function routeOf(hash: string): Route | undefined {
  const axis = new URLSearchParams(hash.replace(/^#/, '')).get('axis');
  if (axis) return { view: 'axis', id: axis };
  if (hash === newHash) return { view: 'new' };
  return hash === listHash || /^#?$/.test(hash) ? { view: 'list' } : undefined;
}

export const listHash = '#axes';
export const newHash = '#new';
export const axisHash = (id: string) => `#axis=${id}`;
export const axisHref = (id: string) => href(`/axes/${axisHash(id)}`);
export const killsDrivesHref = href('/articles/trip/output-stage-failure/#when-the-second-drive-fails-too');
