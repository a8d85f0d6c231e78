import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { root } from '../tools/paths.ts';
import { inventedArticle, inventedId } from './invented-article.ts';

interface GrownSite {
  /** The built site. */
  folder: string;
  /** Builds it again without any cache; returns the seconds that `npm run build` takes. */
  build: () => number;
}

const notCopied = new Set(['node_modules', 'dist', '.git', '.astro', 'out']);
const grown = new Map<number, GrownSite>();

/** Builds this site with additional invented articles, in a copy of the repository; each number once per run. */
export function grownSite(articles: number): GrownSite {
  const known = grown.get(articles);
  if (known) return known;
  const copy = mkdtempSync(join(tmpdir(), `fieldbook-${articles}-`));
  process.on('exit', () => rmSync(copy, { recursive: true, force: true }));
  for (const name of readdirSync(root).filter((entry) => !notCopied.has(entry)))
    cpSync(join(root, name), join(copy, name), { recursive: true, filter: (path) => !/\/tests\/out(\/|$)/.test(path) });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  for (let number = 1; number <= articles; number++) {
    const file = join(copy, 'content/articles', `${inventedId(number)}.mdx`);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, inventedArticle(number));
  }
  const site = { folder: join(copy, 'dist'), build: () => build(copy) };
  site.build();
  grown.set(articles, site);
  return site;
}

function build(copy: string): number {
  const { SITE_OUT, SITE_BASE, ...env } = process.env;
  // The content store below node_modules is shared with this repository, which rebuilds its own.
  for (const made of ['dist', '.astro', 'node_modules/.astro', 'node_modules/.vite'])
    rmSync(join(copy, made), { recursive: true, force: true });
  const begin = performance.now();
  const { status, stdout, stderr } = spawnSync('npm', ['run', 'build'], {
    cwd: copy,
    env,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  const seconds = (performance.now() - begin) / 1000;
  if (status !== 0) throw new Error(`The grown site does not build:\n${(stdout + stderr).slice(-3000)}`);
  return seconds;
}
