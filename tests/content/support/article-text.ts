/** Front matter and body of an MDX article. */
export function splitArticle(text: string): { matter: string; body: string } {
  const match = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text);
  return { matter: match?.[1] ?? '', body: match?.[2] ?? '' };
}

/** Values of `<Component attribute="…">`, in order. */
export function attributesOf(text: string, component: string, attribute: string): string[] {
  const pattern = new RegExp(`<${component}\\b[^>]*\\b${attribute}="([^"]*)"`, 'g');
  return [...text.matchAll(pattern)].map((match) => match[1] ?? '');
}

/** Entries of a list in the front matter, written on one line or one per line. */
export function listed(text: string, field: string): string[] {
  const { matter } = splitArticle(text);
  const oneLine = new RegExp(`^${field}: *\\[([^\\]]*)\\]`, 'm').exec(matter)?.[1];
  if (oneLine !== undefined) return oneLine.split(',').map((entry) => entry.trim());
  const lines = new RegExp(`^${field}:\\n((?: *- .*\\n?)+)`, 'm').exec(matter)?.[1] ?? '';
  return lines.split('\n').flatMap((line) => (/^ *- (.*)$/.exec(line)?.[1] ? [line.replace(/^ *- /, '')] : []));
}

/**
 * What the author typed for the reader, captions included; without imports, components, example readings and computed
 * values.
 */
export function typedProse(text: string): string {
  return proseOf(splitArticle(text).body);
}

/** The same of a body, or of a part of it. */
export function proseOf(body: string): string {
  const withoutCode = body.replace(/^(import|export) .*$/gm, '');
  const withoutReadings = withoutCode.replace(/<Reading>[^<]*<\/Reading>/g, ' … ');
  const withCaptions = withoutReadings.replace(/<Figure caption="([^"]*)">/g, '$1');
  return withCaptions.replace(/<[A-Z/a-z][^>]*>/g, ' ').replace(/\{[^{}]*\}/g, ' … ');
}

/** The texts of the front matter. */
export function matterProse(text: string): string {
  const line = (field: string) => new RegExp(`^${field}: (.*)$`, 'm').exec(splitArticle(text).matter)?.[1] ?? '';
  const lines = [line('title'), line('summary'), line('audience')];
  return [...lines, ...listed(text, 'preconditions'), ...listed(text, 'cannotTell')].join('\n');
}

export function wordCount(prose: string): number {
  return prose.match(/[\p{L}\p{N}][\p{L}\p{N}'’.-]*/gu)?.length ?? 0;
}

/** Whether a page begins with its steps: such a page says what it settles. */
export function isStepsFirst(text: string): boolean {
  return /^settles: ./m.test(splitArticle(text).matter);
}

/** The body of a page up to what it folds. */
export function beforeFolds(body: string): string {
  return body.split(/^<Fold /m)[0] ?? '';
}
