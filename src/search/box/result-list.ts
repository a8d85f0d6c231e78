import type { Answer } from './engine.ts';

/** The answers as a numbered list of links: each page, and below it the heading above the sentence that answers. */
export function resultList(answers: readonly Answer[], siteRoot: string): HTMLOListElement {
  return list(
    'ol',
    answers.map((answer) => links(answer, siteRoot)),
  );
}

/** Terms to search for instead, and a link to all articles. */
export function offerList(terms: readonly string[], searchFor: (term: string) => void, allArticles: string) {
  const offers = terms.map((term) => {
    const button = part('button', term);
    button.className = 'search-page';
    button.setAttribute('type', 'button');
    button.addEventListener('click', () => searchFor(term));
    return button;
  });
  const all = link(allArticles, 'search-page', 'List of all articles');
  return list(
    'ul',
    [...offers, all].map((offer) => [offer]),
  );
}

function links({ url, title, figure, sentence, heading }: Answer, siteRoot: string): HTMLAnchorElement[] {
  const page = link(url, 'search-page', title);
  const kind = kindOf(url.slice(siteRoot.length));
  if (figure) page.append(': ', part('b', figure));
  if (kind) page.append(part('small', kind));
  if (!heading) {
    page.append(marked(sentence));
    return [page];
  }
  const section = link(heading.url, 'search-heading', '');
  section.append(part('strong', heading.title), marked(sentence));
  return [page, section];
}

/** The kind of a result, if its title does not say it. */
function kindOf(path: string): string | undefined {
  if (path.startsWith('glossary/')) return 'Glossary';
  if (path.startsWith('tables/')) return 'Table';
  if (path.startsWith('calculators/')) return 'Calculator';
  return undefined;
}

function marked(sentence: Answer['sentence']): HTMLElement {
  const element = document.createElement('span');
  for (const { text, marked } of sentence) element.append(marked ? part('mark', text) : text);
  return element;
}

function part(name: string, text: string): HTMLElement {
  const element = document.createElement(name);
  element.textContent = text;
  return element;
}

function link(url: string, kind: string, text: string): HTMLAnchorElement {
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.className = kind;
  anchor.textContent = text;
  return anchor;
}

function list<Name extends 'ol' | 'ul'>(name: Name, entries: readonly HTMLElement[][]): HTMLElementTagNameMap[Name] {
  const all = document.createElement(name);
  for (const entry of entries) {
    const item = document.createElement('li');
    item.append(...entry);
    all.append(item);
  }
  return all;
}
