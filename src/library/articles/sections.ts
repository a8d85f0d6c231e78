import type { Article } from './article-schema.ts';

/** The sections of the article list in the order in which a visit needs them. */
export const sections: { id: Article['section']; title: string; about: string }[] = [
  { id: 'safety', title: 'Working safely', about: 'Read these before the first measurement.' },
  { id: 'trip', title: 'The trip', about: 'What stopped the drive, and what the moment of the trip says.' },
  { id: 'measuring', title: 'Measuring', about: 'How to take a reading that can be judged.' },
  { id: 'deciding', title: 'Deciding and after', about: 'What to replace, and what to write down.' },
];

export function sectionTitle(id: Article['section']): string {
  return sections.find((section) => section.id === id)?.title ?? id;
}
