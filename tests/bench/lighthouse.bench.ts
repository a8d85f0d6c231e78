import { siteFolder } from '../tools/paths.ts';
import budgets from './budgets.json' with { type: 'json' };
import { compressedCopy } from './compressed.ts';
import { type LighthouseReport, lighthouse } from './lighthouse.ts';
import type { Bench, Measured } from './measured.ts';
import { withSite } from './with-site.ts';

/** One page of each kind; the first four have a target, the others complete the table. */
const pages = {
  article: '/articles/safety/proving-dead/',
  calculator: '/calculators/bridge/',
  visit: '/visit/',
  practice: '/practice/',
  'article with a calculator': '/articles/measuring/bridge-check/',
  front: '/',
  articles: '/articles/',
  calculators: '/calculators/',
  tables: '/tables/',
  glossary: '/glossary/',
  sources: '/sources/',
  trainers: '/trainers/',
  'worked visit': '/cases/marrow-bay-lift/',
};
/** The best of several runs counts: a busy machine only ever costs points. */
const runs = 2;

async function audit(kind: string, address: string): Promise<Measured[]> {
  const reports: LighthouseReport[] = [];
  for (let run = 0; run < runs; run++) {
    reports.push(await lighthouse(address));
    if (Object.values(reports.at(-1)?.scores ?? {}).every((score) => score === 100)) break;
  }
  const names = Object.keys(reports[0]?.scores ?? {}) as (keyof LighthouseReport['scores'])[];
  return names.map((name) => {
    const best = reports.reduce((a, b) => (b.scores[name] > a.scores[name] ? b : a));
    const value = best.scores[name];
    const why = value < 100 && name === names[0] ? ` (${best.failed.join(', ')})` : '';
    return { what: `${kind}: ${name}${why}`, value, unit: '', least: budgets.lighthouse.score };
  });
}

export const bench: Bench = {
  name: 'Lighthouse on each kind of page, as on a phone; sent compressed',
  run: () =>
    withSite(async (_, site) => {
      const lines: Measured[] = [];
      for (const [kind, path] of Object.entries(pages)) lines.push(...(await audit(kind, site + path.slice(1))));
      return lines;
    }, compressedCopy(siteFolder)),
};
