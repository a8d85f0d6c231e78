import budgets from './budgets.json' with { type: 'json' };
import { grownSite } from './grown-site.ts';
import type { Bench } from './measured.ts';

const { seconds, articles, growth } = budgets.build;
const [none = 0, few = 0, many = 0] = articles;

const rounds = 2;

export const bench: Bench = {
  name: `Building the site, cold, search index and list of the store included, and with invented articles beside its own; least of ${rounds}`,
  run: async () => {
    // Build in turns and take the least of each: other work on the machine only adds time.
    const sites = [none, few, many].map(grownSite);
    const times = Array.from({ length: rounds }, () => sites.map(({ build }) => build()));
    const [own = 0, middle = 0, last = 0] = sites.map((_, place) => Math.min(...times.map((row) => row[place] ?? 0)));
    const early = (middle - own) / (few - none);
    const late = (last - middle) / (many - few);
    return [
      { what: 'the site itself', value: own, unit: 's', budget: seconds },
      { what: `${few} articles more`, value: middle, unit: 's' },
      { what: `${many} articles more`, value: last, unit: 's' },
      { what: 'each article in the first half', value: early * 1000, unit: 'ms' },
      { what: 'each article in the second half', value: late * 1000, unit: 'ms' },
      { what: 'second half against the first', value: late / early, unit: '×', budget: growth },
    ];
  },
};
