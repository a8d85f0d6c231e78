import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { siteFolder } from '../tools/paths.ts';

/** Kinds of pages that have a budget of their own in tests/bench/budgets.json. */
export type PageKind = 'article' | 'calculator' | 'visit' | 'practice' | 'other';

/** An article with a calculator in it counts as a calculator. Print sheets have no budget. */
export function kindOf(path: string): PageKind {
  if (path === '/visit/' || path === '/practice/') return path === '/visit/' ? 'visit' : 'practice';
  if (hasForm(path)) return 'calculator';
  return /^\/articles\/./.test(path) ? 'article' : 'other';
}

function hasForm(path: string): boolean {
  const file = path.endsWith('/') ? `${path}index.html` : path;
  return /<div data-island=/.test(readFileSync(join(siteFolder, file), 'utf8'));
}
