import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { siteBase, siteFolder } from './paths.ts';

/**
 * Every address of the built site that people may have written down: each page, and each heading, row, term and
 * question that shows its own link, and each former one that still works. From the root of the site, without the base
 * path.
 */
export function siteAddresses(): string[] {
  const pages = globSync('**/index.html', { cwd: siteFolder }).filter((file) => !isRedirect(file));
  return pages.flatMap((file) => {
    const page = pathOf(file);
    const links = [
      ...readPage(file).matchAll(
        /<a class="(?:heading|row)-link" href="#([^"]+)"|<span class="former-address" id="([^"]+)"/g,
      ),
    ];
    return [page, ...links.map((match) => `${page}#${match[1] ?? match[2]}`)];
  });
}

/** Paths that redirect to another page, so that all addresses below them are kept. */
export function redirects(): string[] {
  return globSync('**/index.html', { cwd: siteFolder }).filter(isRedirect).map(pathOf);
}

function pathOf(file: string): string {
  return `/${file.replace(/index\.html$/, '')}`;
}

function isRedirect(file: string): boolean {
  return /<meta http-equiv="refresh"/.test(readPage(file));
}

function readPage(file: string): string {
  return readFileSync(join(siteFolder, file), 'utf8').replaceAll(`href="${siteBase}`, 'href="/');
}
