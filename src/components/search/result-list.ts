import type { Answer } from './answer.ts';
import type { KnownTerm } from './nearest.ts';

/** The answers as a list of links: each page, and below it the headings under which the words stand. */
export function resultList(answers: readonly Answer[], siteRoot: string): HTMLUListElement {
  return list(answers.flatMap((answer) => items(answer, siteRoot)));
}

/** What is spelt like the words, and the way to everything. */
export function nearestList(nearest: readonly KnownTerm[], allArticles: string): HTMLUListElement {
  const terms: KnownTerm[] = [...nearest, ['List of all articles', allArticles]];
  return list(terms.map(([text, url]) => link(url, 'search-page', text)));
}

function items(answer: Answer, siteRoot: string): HTMLAnchorElement[] {
  const page = link(answer.url, 'search-page', answer.title);
  const kind = kindOf(answer.url.slice(siteRoot.length));
  if (kind) page.append(part('small', kind));
  if (answer.url.includes('#')) page.append(excerpt(answer.excerpt));
  return [page, ...answer.headings.map(headingLink)];
}

/** What a result is, where its title does not say it. */
function kindOf(path: string): string | undefined {
  if (path.startsWith('glossary/')) return 'Glossary';
  if (path.startsWith('tables/')) return 'Table';
  if (path.startsWith('calculators/')) return 'Calculator';
  return undefined;
}

function headingLink(heading: Answer['headings'][0]): HTMLAnchorElement {
  const anchor = link(heading.url, 'search-heading', '');
  anchor.append(part('strong', heading.title), excerpt(heading.excerpt));
  return anchor;
}

function excerpt(html: string): HTMLElement {
  const element = document.createElement('span');
  // Made by the search library from the text of our own pages: escaped, with <mark> around the words.
  element.innerHTML = html;
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

function list(anchors: readonly HTMLAnchorElement[]): HTMLUListElement {
  const all = document.createElement('ul');
  for (const anchor of anchors) {
    const item = document.createElement('li');
    item.append(anchor);
    all.append(item);
  }
  return all;
}
