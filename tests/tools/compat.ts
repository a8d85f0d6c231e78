import compat from '@mdn/browser-compat-data' with { type: 'json' };
import type { CompatStatement, Identifier, SimpleSupportStatement } from '@mdn/browser-compat-data';
import { isOlder, oldestBrowsers } from '../../src/shipped/targets.ts';

// What the oldest supported browsers can do, by MDN's browser-compat-data.

export { compat };

/** Names of browsers that differ between browserslist and the compatibility data. */
const names: Record<string, string> = { ios_saf: 'safari_ios' };
const targets = [...oldestBrowsers()].map(([name, version]) => ({ name: names[name] ?? name, version }));

/** The supported browsers that lack a feature, or only have it under another name. */
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

/** Everything that scripts may access by a name: properties of any object, and globals. */
const bearers = new Map<string, Identifier[]>();
for (const [, holder] of holders)
  for (const [name, member] of below(holder)) {
    const plain = name.replace(/_(static|event)$/, '');
    bearers.set(plain, [...(bearers.get(plain) ?? []), member]);
  }

/** The browsers that lack `holder.name`; if the data has it elsewhere, those that lack every property of that name. */
export function lackingMember(holder: string, name: string): string[] {
  const members = new Map(below(holders.get(holder)));
  const member = members.get(name) ?? members.get(`${name}_static`);
  return member ? lacking(member) : lackingName(name);
}

/** The browsers that lack a property of that name, if each such property is lacking somewhere. */
export function lackingName(name: string): string[] {
  const lists = (bearers.get(name) ?? []).map(lacking);
  return lists.length > 0 && lists.every((list) => list.length > 0) ? [...new Set(lists.flat())] : [];
}

/** The browsers that lack a global of that name, such as `structuredClone`. */
export const lackingGlobal = (name: string): string[] =>
  holders.has(name) ? lacking(holders.get(name)) : lacking(compat.api.Window?.[name]);
