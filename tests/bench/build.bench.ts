import budgets from './budgets.json' with { type: 'json' };
import { grownSite } from './grown-site.ts';
import type { Bench } from './measured.ts';

const [few = 0, many = 0] = budgets.build.articles;

/** Half-way between the two, to see whether the time grows in proportion. */
const between = Math.round((few + many) / 2);

const rounds = 3;

export const bench: Bench = {
  name: 'Building the site with invented articles beside its own, cold, search index and list of the store included; least of three',
  run: async () => {
    // In turns, and the least of each: what else the machine does, or how fast it is just now, only adds.
    const sites = [few, between, many].map(grownSite);
    const times = Array.from({ length: rounds }, () => sites.map(({ build }) => build()));
    const [first = 0, middle = 0, last = 0] = sites.map((_, place) => Math.min(...times.map((row) => row[place] ?? 0)));
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
