import { globSync, readFileSync } from 'node:fs';
import { defineMdastPlugin } from 'satteri';
import { termFinder } from './find-terms.ts';
import type { Term } from './glossary-schema.ts';

/** Where a link would disturb or be nested in a link: headings, links, code, and the content of these elements. */
const closedNodes = new Set(['heading', 'link', 'linkReference', 'inlineCode', 'code', 'table']);
const closedElements = new Set(['a', 'Reading', 'Limit', 'Cite', 'Figure', 'sub', 'sup', 'svg', 'code']);

/** Every term of content/glossary, by id. */
export function readGlossary(root: string): Record<string, Term> {
  const files = globSync('content/glossary/*.json', { cwd: root });
  return Object.assign({}, ...files.map((file) => JSON.parse(readFileSync(`${root}/${file}`, 'utf8'))));
}

/**
 * Links the first use of each term in an article to its entry in the glossary, when the site is built. One plugin
 * object per article, since each remembers what it has linked. `base` is the base path of the site.
 */
export function linkTerms(terms: Readonly<Record<string, Term>>, base: string) {
  const find = termFinder(terms);
  return () => {
    const done = new Set<string>();
    return defineMdastPlugin({
      name: 'link-terms',
      text(node, context) {
        const found = find(node.value, done);
        // In this order: few texts contain a term, and checking a node's ancestors costs more than searching its text.
        if (found.length === 0 || isClosed(node, context)) return;
        const parts: Part[] = [];
        let end = 0;
        for (const { id, from, to } of found) {
          parts.push(
            { type: 'text', value: node.value.slice(end, from) },
            termLink(base, id, node.value.slice(from, to)),
          );
          done.add(id);
          end = to;
        }
        parts.push({ type: 'text', value: node.value.slice(end) });
        context.replaceNode(
          node,
          parts.filter((part) => part.type === 'link' || part.value !== ''),
        );
      },
    });
  };
}

interface Words {
  type: 'text';
  value: string;
}

interface TermLink {
  type: 'link';
  url: string;
  data: { hProperties: { className: string[] } };
  children: Words[];
}

type Part = Words | TermLink;

function termLink(base: string, id: string, value: string): TermLink {
  const url = `${base.replace(/\/$/, '')}/glossary/#${id}`;
  return { type: 'link', url, data: { hProperties: { className: ['term'] } }, children: [{ type: 'text', value }] };
}

type Visit = NonNullable<ReturnType<typeof defineMdastPlugin>['text']>;
type Context = Parameters<Visit>[1];
type Target = Parameters<Context['parent']>[0];

function isClosed(node: Target, context: Context): boolean {
  for (let above = context.parent(node); above !== undefined; above = context.parent(above as Target)) {
    if (closedNodes.has(above.type)) return true;
    if ('name' in above && closedElements.has(String(above.name))) return true;
  }
  return false;
}
