/** The view that the address names, in its fragment, so that one static page serves every visit. */
export type Route =
  | { view: 'list' }
  | { view: 'visit'; id: string }
  | { view: 'report'; id: string }
  | { view: 'shared'; share: string };

/** Undefined for an anchor within the page, such as the skip link: the view does not change. */
export function routeOf(hash: string): Route | undefined {
  const fields = new URLSearchParams(hash.replace(/^#/, ''));
  const share = fields.get('share');
  if (share !== null) return { view: 'shared', share };
  const report = fields.get('report');
  if (report) return { view: 'report', id: report };
  const visit = fields.get('visit');
  if (visit) return { view: 'visit', id: visit };
  return hash === listHash || /^#?$/.test(hash) ? { view: 'list' } : undefined;
}

export const listHash = '#visits';
export const visitHash = (id: string) => `#visit=${id}`;
export const reportHash = (id: string) => `#report=${id}`;
