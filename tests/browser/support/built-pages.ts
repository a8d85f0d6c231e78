import { globSync } from 'node:fs';
import { siteFolder } from '../../tools/paths.ts';
import { redirects } from '../../tools/site-addresses.ts';

/** Paths of all pages of the built site, as a visitor would open them: `/`, `/tables/`, `/404.html`; not those that lead on. */
export function builtPages(): string[] {
  const files = globSync('**/*.html', { cwd: siteFolder }).sort();
  const leadingOn = redirects();
  return files
    .map((file) => `/${file.replaceAll('\\', '/').replace(/(^|\/)index\.html$/, '$1')}`)
    .filter((path) => !leadingOn.includes(path));
}
