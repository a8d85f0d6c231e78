import { globSync } from 'node:fs';
import { siteFolder } from '../../tools/paths.ts';

/** Paths of all pages of the built site, as a visitor would open them: `/`, `/tables/`, `/404.html`. */
export function builtPages(): string[] {
  const files = globSync('**/*.html', { cwd: siteFolder }).sort();
  return files.map((file) => `/${file.replaceAll('\\', '/').replace(/(^|\/)index\.html$/, '$1')}`);
}
