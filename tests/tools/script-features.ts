import { type AnyNode, parse } from 'acorn';
import { full } from 'acorn-walk';
import { compat, lacking, lackingGlobal, lackingName } from './compat.ts';

/** The newest edition of the language that all supported browsers can parse; the build writes no later one. */
const edition = 2020;

const { javascript, api } = compat;
const syntax = {
  lookbehind: javascript.regular_expressions?.lookbehind_assertion,
  'regular expression with v': javascript.builtins?.RegExp?.unicodeSets,
  'regular expression with d': javascript.builtins?.RegExp?.hasIndices,
  'worker as a module': api.Worker?.Worker?.ecmascript_modules,
  'import() in a worker': javascript.operators?.import?.worker_support,
};

/**
 * What a built script uses that some supported browser lacks. Types are unknown here, so a property counts only if no
 * object of those browsers has one of that name. Throws if they could not parse the script.
 */
export function youngFeatures(code: string, kind: 'module' | 'worker'): string[] {
  const found = new Set<string>();
  const tree = parse(code, { ecmaVersion: edition, sourceType: kind === 'module' ? 'module' : 'script' });
  full(tree, (any) => {
    const node = any as AnyNode;
    for (const name of propertiesIn(node)) if (lackingName(name).length > 0) found.add(`.${name}`);
    if (node.type === 'Identifier' && lackingGlobal(node.name).length > 0) found.add(node.name);
    for (const name of syntaxIn(node, kind)) if (lacking(syntax[name]).length > 0) found.add(name);
  });
  return [...found].sort();
}

/** The property names that are read or destructured from an object. */
function propertiesIn(node: AnyNode): string[] {
  if (node.type === 'MemberExpression') return nameOf(node.property, node.computed);
  if (node.type !== 'ObjectPattern') return [];
  return node.properties.flatMap((part) => (part.type === 'Property' ? nameOf(part.key, part.computed) : []));
}

function nameOf(key: AnyNode, computed: boolean): string[] {
  if (key.type === 'Identifier' && !computed) return [key.name];
  return key.type === 'Literal' && typeof key.value === 'string' ? [key.value] : [];
}

/** Options of a worker that are not written out, or state a type, may make it a module. */
function mayBeModule(options: AnyNode | undefined): boolean {
  if (options === undefined) return false;
  if (options.type !== 'ObjectExpression') return true;
  return options.properties.some((part) => part.type !== 'Property' || nameOf(part.key, part.computed)[0] !== 'name');
}

function syntaxIn(node: AnyNode, kind: 'module' | 'worker'): (keyof typeof syntax)[] {
  if (node.type === 'ImportExpression' && kind === 'worker') return ['import() in a worker'];
  if (node.type === 'NewExpression')
    return node.callee.type === 'Identifier' && node.callee.name === 'Worker' && mayBeModule(node.arguments[1])
      ? ['worker as a module']
      : [];
  const text = node.type === 'TemplateElement' ? node.value.raw : node.type === 'Literal' ? String(node.value) : '';
  const flags = node.type === 'Literal' ? (node.regex?.flags ?? '') : '';
  return [
    ...(/\(\?<[=!]/.test(text) ? (['lookbehind'] as const) : []),
    ...(flags.includes('v') ? (['regular expression with v'] as const) : []),
    ...(flags.includes('d') ? (['regular expression with d'] as const) : []),
  ];
}
