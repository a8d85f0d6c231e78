import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
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

/**
 * A few pages that together hold everything the site draws: each kind of page, each element, each class on it. Taken
 * greedily, so that the pages richest in looks come first.
 */
export function pagesWithEveryLook(paths: readonly string[]): Set<string> {
  const looks = new Map(paths.map((path) => [path, looksOf(path)]));
  const missing = new Set([...looks.values()].flatMap((held) => [...held]));
  const taken = new Set<string>();
  while (missing.size > 0) {
    const adds = (path: string) => [...(looks.get(path) ?? [])].filter((look) => missing.has(look));
    const best = paths.reduce((one, other) => (adds(other).length > adds(one).length ? other : one));
    for (const look of adds(best)) missing.delete(look);
    taken.add(best);
  }
  return taken;
}

/** `article`, `p`, `p.hint` … and the first part of the address. */
function looksOf(path: string): Set<string> {
  const html = readFileSync(join(siteFolder, path.endsWith('/') ? `${path}index.html` : path), 'utf8');
  const found = new Set([path.split('/', 2).join('/')]);
  for (const [, tag = '', attributes = ''] of html.matchAll(/<([a-z][\w-]*)([^>]*)>/g)) {
    found.add(tag);
    const classes = / class="([^"]*)"/.exec(attributes)?.[1] ?? '';
    for (const one of classes.split(/\s+/).filter(Boolean)) found.add(`${tag}.${one}`);
  }
  return found;
}
