import budgets from './budgets.json' with { type: 'json' };
import { grownSite } from './grown-site.ts';
import type { Bench } from './measured.ts';

const [few = 0, many = 0] = budgets.build.articles;

/** Half-way between the two, to see whether the time grows in proportion. */
const between = Math.round((few + many) / 2);

export const bench: Bench = {
  name: 'Building the site with invented articles beside its own, cold, search index and list of the store included',
  run: async () => {
    const [first = 0, middle = 0, last = 0] = [few, between, many].map((articles) => grownSite(articles).seconds);
    const early = (middle - first) / (between - few);
    const late = (last - middle) / (many - between);
    return [
      { what: `${few} articles more`, value: first, unit: 's' },
      { what: `${between} articles more`, value: middle, unit: 's' },
      { what: `${many} articles more`, value: last, unit: 's' },
      { what: 'each article in the first half', value: early * 1000, unit: 'ms' },
      { what: 'each article in the second half', value: late * 1000, unit: 'ms' },
      { what: 'second half against the first', value: late / early, unit: '×', budget: budgets.build.growth },
    ];
  },
};
