import type { MarkdownHeading } from 'astro';

export interface ContentsEntry {
  slug: string;
  text: string;
  children: ContentsEntry[];
}

/** Second-level headings with their third-level ones; deeper ones are omitted. */
export function contentsOf(headings: readonly MarkdownHeading[]): ContentsEntry[] {
  const entries: ContentsEntry[] = [];
  for (const { depth, slug, text } of headings) {
    const entry = { slug, text, children: [] };
    const parent = entries.at(-1);
    if (depth === 2) entries.push(entry);
    else if (depth === 3 && parent) parent.children.push(entry);
  }
  return entries;
}
