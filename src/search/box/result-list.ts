import type { Answer } from './engine.ts';

/** The answers as a list of links: each page, and below it the headings above the found words. */
export function resultList(answers: readonly Answer[], siteRoot: string): HTMLUListElement {
  return list(answers.flatMap((answer) => items(answer, siteRoot)));
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
  return list([...offers, link(allArticles, 'search-page', 'List of all articles')]);
}

function items(answer: Answer, siteRoot: string): HTMLAnchorElement[] {
  const page = link(answer.url, 'search-page', answer.title);
  const kind = kindOf(answer.url.slice(siteRoot.length));
  if (kind) page.append(part('small', kind));
  if (answer.url.includes('#') && answer.excerpt) page.append(excerpt(answer.excerpt));
  return [page, ...answer.headings.map(headingLink)];
}

/** The kind of a result, if its title does not say it. */
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

function list(entries: readonly HTMLElement[]): HTMLUListElement {
  const all = document.createElement('ul');
  for (const entry of entries) {
    const item = document.createElement('li');
    item.append(entry);
    all.append(item);
  }
  return all;
}
