import type { Element, ElementContent, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { htmlToHast } from 'satteri';

/** Ids that are unique in the article are not unique in a handout, and nobody follows a # on paper. */
const dropped = new Set(['id', 'dataPagefindIgnore', 'ariaLabelledBy']);
const demoted: Record<string, string> = { h2: 'h3', h3: 'h4', h4: 'h4' };

/**
 * Reduces an article's HTML to what a handout needs: cautions, numbered steps and common mistakes, each below its
 * headings, one level lower. `page` is the address of the article, for links to its own headings.
 */
export function condense(html: string, page: string): string {
  const { children } = htmlToHast(html, { fragment: true }) as Root;
  const kept: Element[] = [];
  let headings: Element[] = [];
  let mistakes = false;
  for (const child of children) {
    if (child.type !== 'element') continue;
    if (child.tagName in demoted) {
      if (child.tagName === 'h2') mistakes = /^mistakes/i.test(String(child.properties.id ?? ''));
      headings = [...headings.filter(({ tagName }) => tagName < child.tagName), child];
    } else if (child.tagName === 'ol' || isCaution(child) || (mistakes && child.tagName === 'ul')) {
      kept.push(...headings, child);
      headings = [];
    }
  }
  return toHtml({ type: 'root', children: kept.map((element) => forPaper(element, page)) });
}

function isCaution({ properties }: Element): boolean {
  return Array.isArray(properties.className) && properties.className.includes('caution');
}

function forPaper(element: Element, page: string): Element {
  const { tagName, properties, children } = element;
  const entries = Object.entries(properties).filter(([name]) => !dropped.has(name));
  const href =
    typeof properties.href === 'string' && properties.href.startsWith('#') ? { href: page + properties.href } : {};
  return {
    type: 'element',
    tagName: demoted[tagName] ?? tagName,
    properties: { ...Object.fromEntries(entries), ...href },
    children: children.flatMap((child) => inlineForPaper(child, page)),
  };
}

function inlineForPaper(child: ElementContent, page: string): ElementContent[] {
  if (child.type !== 'element') return [child];
  const names = Array.isArray(child.properties.className) ? child.properties.className : [];
  if (names.includes('heading-link')) return [];
  const clean = forPaper(child, page);
  return names.includes('term') ? clean.children : [clean];
}
