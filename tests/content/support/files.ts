import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../tools/paths.ts';

export interface ContentFile {
  /** Path below the repository. */
  path: string;
  text: string;
}

export function filesOf(pattern: string): ContentFile[] {
  const paths = globSync(pattern, { cwd: root }).sort();
  return paths.map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));
}

export function jsonOf(pattern: string): { path: string; data: unknown }[] {
  return filesOf(pattern).map(({ path, text }) => ({ path, data: JSON.parse(text) }));
}
