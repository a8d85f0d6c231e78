/** What only the search index reads: it would make each page heavier for no reader. */
const forIndex = /\s(?:data-pagefind-[a-z-]+|data-other-words)(?:="[^"]*")?(?=[\s/>])/g;

/** A finished page without the marks for the search index and without the space between its tags. */
export const slimPage = (html: string): string =>
  html.replaceAll(/<[a-z][^>]*>/g, (tag) => tag.replaceAll(forIndex, '')).replaceAll(/(?<=>)\s+(?=<)/g, ' ');
