import { join } from 'node:path';
import browserslist from 'browserslist';

const root = join(import.meta.dirname, '../..');

/** Names of browsers that differ between browserslist and the build tools. */
const toolNames: Record<string, string> = { ios_saf: 'ios' };

/** The oldest supported version of each browser, defined only in `browserslist` of package.json. */
export function oldestBrowsers(): Map<string, string> {
  const oldest = new Map<string, string>();
  for (const entry of browserslist(undefined, { path: root })) {
    const [name = '', versions = ''] = entry.split(' ');
    const [version = ''] = versions.split('-');
    const known = oldest.get(name);
    if (known === undefined || isOlder(version, known)) oldest.set(name, version);
  }
  return oldest;
}

/** The same in the form of the build tools: `chrome87`, `ios14.5`. */
export const buildTargets: string[] = [...oldestBrowsers()].map(
  ([name, version]) => (toolNames[name] ?? name) + version,
);

/** `14.1` is older than `14.5`, and `9` older than `10`. */
export function isOlder(version: string, than: string): boolean {
  const [a, b] = [version, than].map((text) => text.split('.').map(Number));
  const [major = 0, minor = 0] = a ?? [];
  const [otherMajor = 0, otherMinor = 0] = b ?? [];
  return major < otherMajor || (major === otherMajor && minor < otherMinor);
}
