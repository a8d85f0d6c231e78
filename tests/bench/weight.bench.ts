import { builtPages } from '../browser/support/built-pages.ts';
import budgets from './budgets.json' with { type: 'json' };
import type { Bench, Measured } from './measured.ts';
import type { PageKind } from './page-kinds.ts';
import type { PageWeight } from './page-weight.ts';
import { storeSize } from './store-size.ts';
import { type WeighedPage, weighSite } from './weigh-site.ts';
import { withSite } from './with-site.ts';

type Size = Exclude<keyof PageWeight, 'framework' | 'requests'>;

const sizes: Partial<Record<Size, string>> = {
  html: 'HTML',
  style: 'styles',
  script: 'scripts',
  scriptGzip: 'scripts, gzip',
  withoutFonts: 'without typefaces',
  withFonts: 'with typefaces',
};
const kinds: PageKind[] = ['article', 'calculator', 'visit', 'practice', 'other'];

/** The heaviest page of a kind, with the budget of the kind if it has one. */
function heaviest(pages: readonly WeighedPage[], kind: PageKind): Measured[] {
  const own = pages.filter((page) => page.kind === kind);
  const budget: Partial<Record<string, number>> = budgets[kind];
  return (Object.keys(sizes) as Size[]).map((size) => {
    const worst = own.reduce((most, page) => (page[size] > most[size] ? page : most));
    const what = `${kind} (${own.length}), ${sizes[size]}: ${worst.path}`;
    return { what, value: worst[size], unit: 'B', ...(budget[size] && { budget: budget[size] }) };
  });
}

export const bench: Bench = {
  name: 'What the heaviest page of each kind weighs at the first visit; brotli where nothing else is said',
  run: async () => {
    const pages = await withSite((browser, site) => weighSite(browser, site, builtPages()));
    const plain = pages.filter(({ kind }) => kind === 'article' || kind === 'other');
    const framework = plain.reduce((sum, page) => sum + page.framework.length, 0);
    return [
      ...kinds.flatMap((kind) => heaviest(pages, kind)),
      { what: 'framework modules on pages without a form', value: framework, unit: '', budget: 0 },
      { what: 'whole store on the device', value: storeSize(), unit: 'B', budget: budgets.store.bytes },
    ];
  },
};
