import type { Browser } from 'playwright-core';
import { placesFound } from '../search/ask.ts';
import queries from '../search/queries.json' with { type: 'json' };
import budgets from './budgets.json' with { type: 'json' };
import { firstAnswer, type Start, type Typing } from './first-answer.ts';
import { grownSite } from './grown-site.ts';
import type { Bench, Measured } from './measured.ts';
import { withSite } from './with-site.ts';

const runs = 5;
interface Way {
  how: string;
  typing: Typing;
  start: Start;
  /** Only a script pastes within hundredths of a second after the touch: printed without a budget. */
  onlyByScript?: true;
}

const ways: Way[] = [
  { how: 'on the device, pasted at once', typing: { pastedAfter: 0 }, start: 'stored' },
  { how: 'on the device, key by key', typing: { pause: 80 }, start: 'stored' },
  { how: 'first visit, pasted at once', typing: { pastedAfter: 0 }, start: 'first visit', onlyByScript: true },
  { how: 'first visit, pasted after half a second', typing: { pastedAfter: 500 }, start: 'first visit' },
  { how: 'first visit, key by key', typing: { pause: 80 }, start: 'first visit' },
];

/** The page that searches, and the word: one that many pages contain. */
const page = 'articles/safety/proving-dead/';
const word = 'insulation';

async function hits(browser: Browser, site: string): Promise<Measured[]> {
  const window = await browser.newPage();
  await window.goto(site);
  const places = await placesFound(window, new URL(site).pathname);
  await window.close();
  const share = (kind: string, within: number) => {
    const asked = queries.flatMap((query, index) => (kind === '' || query.kind === kind ? [places[index] ?? -1] : []));
    return (100 * asked.filter((place) => place >= 0 && place < within).length) / asked.length;
  };
  return [
    { what: `${queries.length} queries: answered by the first answer`, value: share('', 1), unit: '%', least: 92 },
    { what: `${queries.length} queries: answered by the first five`, value: share('', 5), unit: '%', least: 99 },
    ...[...new Set(queries.map(({ kind }) => kind))].map((kind): Measured => {
      return { what: `  ${kind}: answered by the first answer`, value: share(kind, 1), unit: '%' };
    }),
  ];
}

async function times(browser: Browser, site: string, size: string): Promise<Measured[]> {
  const lines: Measured[] = [];
  for (const { how, typing, start, onlyByScript } of ways) {
    const taken: number[] = [];
    for (let run = 0; run < runs; run++) taken.push(await firstAnswer(browser, site + page, word, typing, start));
    taken.sort((a, b) => a - b);
    const judged = onlyByScript ? {} : { budget: budgets.search.milliseconds };
    lines.push({ what: `${size}, ${how}: shortest of ${runs}`, value: taken[0] ?? 0, unit: 'ms', ...judged });
    lines.push({
      what: `${size}, ${how}: middle of ${runs}`,
      value: taken[Math.floor(runs / 2)] ?? 0,
      unit: 'ms',
      ...judged,
    });
  }
  return lines;
}

export const bench: Bench = {
  name: 'Search: what it finds, and the last input to the first answer at fourfold CPU slowdown',
  run: async () => {
    const lines = await withSite(async (browser, site) => [
      ...(await hits(browser, site)),
      ...(await times(browser, site, 'this site')),
    ]);
    const many = Math.max(...budgets.build.articles);
    const { folder } = grownSite(many);
    const grown = await withSite((browser, site) => times(browser, site, `${many} articles more`), folder);
    return [...lines, ...grown];
  },
};
