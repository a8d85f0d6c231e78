import { getCollection } from 'astro:content';
import type { Term } from './glossary-schema.ts';

export interface GlossaryEntry extends Term {
  id: string;
}

/** Every term, from A to Z. */
export async function glossaryInOrder(): Promise<GlossaryEntry[]> {
  const files = await getCollection('glossary');
  const entries = files.flatMap(({ data }) => Object.entries(data).map(([id, term]) => ({ id, ...term })));
  return entries.sort((a, b) => a.term.localeCompare(b.term, 'en'));
}

/** Large first letter of a term, for the headings of the glossary. */
export function letterOf({ term }: Term): string {
  return term.charAt(0).toUpperCase();
}
