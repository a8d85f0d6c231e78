import compat from '@mdn/browser-compat-data' with { type: 'json' };
import type { CompatStatement, Identifier, SimpleSupportStatement } from '@mdn/browser-compat-data';
import { isOlder, oldestBrowsers } from '../../src/shipped/targets.ts';

// What the browsers of the targets know, after MDN's browser-compat-data.

export { compat };

/** What the compatibility data calls a browser that browserslist names otherwise. */
const names: Record<string, string> = { ios_saf: 'safari_ios' };
const targets = [...oldestBrowsers()].map(([name, version]) => ({ name: names[name] ?? name, version }));

/** The browsers of the targets that lack a feature, or know it by another name only. */
export function lacking(feature: Identifier | undefined): string[] {
  const statement = feature?.__compat;
  if (statement === undefined) return [];
  return targets.flatMap(({ name, version }) =>
    supportIn(statement, name).some((one) => isIn(one, version)) ? [] : [`${name} ${version}`],
  );
}

function supportIn({ support }: CompatStatement, browser: string): SimpleSupportStatement[] {
  const found = Object.entries(support).find(([name]) => name === browser)?.[1];
  return found === undefined ? [] : [found].flat();
}

function isIn(support: SimpleSupportStatement, version: string): boolean {
  const { version_added: added, version_removed: removed, flags, prefix, alternative_name: other } = support;
  if (flags || prefix || other || typeof added !== 'string' || added === 'preview') return false;
  const isGone = typeof removed === 'string' && !isOlder(version, removed);
  return !isGone && !isOlder(version, added.replace('≤', ''));
}

/** The features below one, by name. */
export function below(feature: Identifier | undefined): [string, Identifier][] {
  return Object.entries(feature ?? {}).filter(([name]) => name !== '__compat') as [string, Identifier][];
}

const holders = new Map([...below(compat.api), ...below(compat.javascript.builtins)]);

/** All that scripts know by a name: properties of whatever object, and what stands alone. */
const bearers = new Map<string, Identifier[]>();
for (const [, holder] of holders)
  for (const [name, member] of below(holder)) {
    const plain = name.replace(/_(static|event)$/, '');
    bearers.set(plain, [...(bearers.get(plain) ?? []), member]);
  }

/** The browsers that lack `holder.name`; where the data files it elsewhere, those that know nothing of the name. */
export function lackingMember(holder: string, name: string): string[] {
  const members = new Map(below(holders.get(holder)));
  const member = members.get(name) ?? members.get(`${name}_static`);
  return member ? lacking(member) : lackingName(name);
}

/** The browsers that lack every property of that name, where each of them is lacking somewhere. */
export function lackingName(name: string): string[] {
  const lists = (bearers.get(name) ?? []).map(lacking);
  return lists.length > 0 && lists.every((list) => list.length > 0) ? [...new Set(lists.flat())] : [];
}

/** The browsers that lack what stands alone under that name, such as `structuredClone`. */
export const lackingGlobal = (name: string): string[] =>
  holders.has(name) ? lacking(holders.get(name)) : lacking(compat.api.Window?.[name]);
