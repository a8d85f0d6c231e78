import { relative } from 'node:path';
import { root, siteFolder } from './paths.ts';
import { astro, run } from './run.ts';

/** Builds the site and then the search index over the finished pages. True when both succeeded. */
export async function buildSite(): Promise<boolean> {
  if ((await astro(['build'])) !== 0) return false;
  return (await run('pagefind', ['--site', relative(root, siteFolder)])) === 0;
}

if (import.meta.main) process.exitCode = (await buildSite()) ? 0 : 1;
