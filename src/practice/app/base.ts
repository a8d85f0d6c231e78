/** The path that the site is served below, without a slash at its end. */
export function base(): string {
  return (document.documentElement.dataset.base ?? '/').replace(/\/$/, '');
}
