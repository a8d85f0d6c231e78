import { type CollectionEntry, getCollection } from 'astro:content';
import type { CalculatorName } from '../../calculators/registry.ts';
import { memoPerBuild } from '../../site/memo-per-build.ts';
import type { WorkedVisit } from '../../ui/form/use-form.ts';
import { href } from '../../ui/href.ts';

type CaseEntry = CollectionEntry<'cases'>;

/** Every worked case, in the order of the list. */
export const casesInOrder = memoPerBuild(
  async (): Promise<readonly CaseEntry[]> => (await getCollection('cases')).sort((a, b) => a.data.order - b.data.order),
);

export function caseHref(id: string): string {
  return href(`/cases/${id}/`);
}

/** The entries of all cases for one calculator; `#case=` fills a form with one of them. */
export async function workedVisits(name: CalculatorName): Promise<WorkedVisit[]> {
  return (await casesInOrder()).flatMap(({ id, data }) => {
    const form = data.forms[name];
    return form === undefined ? [] : [{ id, title: data.title, form }];
  });
}
