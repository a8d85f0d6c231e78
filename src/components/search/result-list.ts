import type { HeadingHit, PageHit } from './engine.ts';

/** Headings shown for one page. */
const mostHeadings = 4;

/** The hits as a list of links: each page, and below it the headings under which the words stand. */
export function resultList(pages: readonly PageHit[]): HTMLUListElement {
  const list = document.createElement('ul');
  list.append(...pages.flatMap(pageItems));
  return list;
}

function pageItems(page: PageHit): HTMLLIElement[] {
  const headings = page.sub_results
    .filter((hit) => hit.url !== page.url)
    .sort((a, b) => score(b) - score(a))
    .slice(0, mostHeadings);
  const title = link(page.url, 'search-page');
  title.textContent = page.meta.title ?? page.url;
  return [item(title), ...headings.map((hit) => item(headingLink(hit)))];
}

/** The library gives headings in the order of the page; the one that answers best belongs first. */
function score(hit: HeadingHit): number {
  return hit.weighted_locations.reduce((sum, { balanced_score }) => sum + balanced_score, 0);
}

function headingLink(hit: HeadingHit): HTMLAnchorElement {
  const heading = link(hit.url, 'search-heading');
  const title = document.createElement('strong');
  title.textContent = hit.title;
  const excerpt = document.createElement('span');
  excerpt.innerHTML = hit.excerpt;
  heading.append(title, excerpt);
  return heading;
}

function link(url: string, kind: string): HTMLAnchorElement {
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.className = kind;
  return anchor;
}

function item(anchor: HTMLAnchorElement): HTMLLIElement {
  const listItem = document.createElement('li');
  listItem.append(anchor);
  return listItem;
}
