import { type CssNode, generate, type List, parse, walk } from 'css-tree';
import { below, compat, lacking } from './compat.ts';

const { css } = compat;
const selectors = new Map(below(css.selectors));
const properties = new Map(below(css.properties));
const media = new Map(below(css['at-rules']?.media));

/** A part of a style sheet that some supported browser can't read. */
interface YoungStyle {
  /** `:has`, `accent-color`, `@media scripting`, `width: fit-content`. */
  feature: string;
  /** Selectors of the same rule that the browser understands but drops with it. */
  bystanders: string[];
}

/** What a style sheet uses that some supported browser lacks. Values are looked up by word, function and unit. */
export function youngStyles(code: string): YoungStyle[] {
  const found: YoungStyle[] = [];
  walk(parse(code, { parseCustomProperty: false }), (node) => {
    if (node.type === 'Rule' && node.prelude.type === 'SelectorList')
      found.push(...inSelectors(node.prelude.children.toArray()));
    if (node.type === 'Declaration') for (const feature of inDeclaration(node)) found.push({ feature, bystanders: [] });
    if (node.type === 'FeatureRange') found.push({ feature: '@media range', bystanders: [] });
    if (node.type === 'Feature') {
      const name = node.name.replace(/^(min|max)-/, '');
      if (lacking(media.get(name)).length > 0) found.push({ feature: `@media ${name}`, bystanders: [] });
    }
    if (node.type === 'Atrule' && lacking(css['at-rules']?.[node.name]).length > 0)
      found.push({ feature: `@${node.name}`, bystanders: [] });
  });
  return found;
}

/** A browser drops a whole rule if it can't read one of its selectors. */
function inSelectors(list: CssNode[]): YoungStyle[] {
  const young = list.map((selector) => youngIn(selector));
  const bystanders = list.filter((_, place) => young[place]?.length === 0).map((selector) => generate(selector));
  return young.flat().map((feature) => ({ feature, bystanders }));
}

function youngIn(selector: CssNode, within = ''): string[] {
  const found: string[] = [];
  if (selector.type === 'PseudoClassSelector' || selector.type === 'PseudoElementSelector') {
    const { name } = selector;
    // The build writes :-webkit-any() beside :is(); within :not() the browsers in question can't read it.
    if (name === '-webkit-any' && within === 'not') found.push(':is in :not');
    if (name === 'not' && holdsList(selector) && lacking(selectors.get('not')?.selector_list).length > 0)
      found.push(':not with a list');
    if (lacking(selectors.get(name)).length > 0) found.push(`:${name}`);
    within = name;
  }
  const children = 'children' in selector ? (selector.children?.toArray() ?? []) : [];
  return [...found, ...children.flatMap((child) => youngIn(child, within))];
}

/** Whether a pseudo-class contains several selectors. */
function holdsList({ children }: { children: List<CssNode> | null }): boolean {
  const first = children?.first;
  return first?.type === 'SelectorList' && first.children.size > 1;
}

function inDeclaration({ property, value }: Extract<CssNode, { type: 'Declaration' }>): string[] {
  if (property.startsWith('-')) return [];
  const feature = properties.get(property);
  if (lacking(feature).length > 0) return [property];
  const found: string[] = [];
  walk(value, (node) => {
    if (
      node.type === 'Identifier' &&
      lacking(feature?.[node.name.replaceAll('-', '_')] ?? feature?.[node.name]).length > 0
    )
      found.push(`${property}: ${node.name}`);
    if (node.type === 'Function' && lacking(valueTypes.get(node.name)).length > 0) found.push(`${node.name}()`);
    if (node.type === 'Dimension' && /^[sdl]v(w|h|i|b|min|max)$/.test(node.unit)) found.push(node.unit);
  });
  return found;
}

/** Functions in values, such as `color-mix`, by name. */
const valueTypes = new Map(below(css.types).flatMap(([name, type]) => [[name, type] as const, ...below(type)]));
