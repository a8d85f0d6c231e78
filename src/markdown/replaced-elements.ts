/** Elements of Markdown that a component takes the place of: `article-components.ts` says which. */
export const replacedElements = ['h2', 'h3', 'h4', 'table'] as const;
