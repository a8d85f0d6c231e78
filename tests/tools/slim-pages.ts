import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { siteFolder } from './paths.ts';

/** What only the search index reads: it would make each page heavier for no reader. */
const forIndex = /\s(?:data-pagefind-[a-z-]+|data-other-words)(?:="[^"]*")?(?=[\s/>])/g;

/** Takes the marks for the search index out of the finished pages, once the index has been written. */
export function slimPages(folder = siteFolder): void {
  for (const file of globSync('**/*.html', { cwd: folder })) {
    const path = join(folder, file);
    const html = readFileSync(path, 'utf8');
    const slim = html
      .replaceAll(/<[a-z][^>]*>/g, (tag) => tag.replaceAll(forIndex, ''))
      .replaceAll(/(?<=>)\s+(?=<)/g, ' ');
    if (slim !== html) writeFileSync(path, slim);
  }
}
