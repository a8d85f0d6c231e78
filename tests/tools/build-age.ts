import { existsSync, readdirSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { root, siteFolder } from './paths.ts';

const sources = ['src', 'content', 'public', 'astro.config.mjs', 'package-lock.json'];

/** The worker with the list of all files is written last: an aborted build has none, or an old one. */
const lastFile = 'sw.js';

/** Whether the built site is newer than all its sources. */
export function isBuildCurrent(): boolean {
  const built = join(siteFolder, lastFile);
  if (!existsSync(built)) return false;
  const time = statSync(built).mtimeMs;
  return sources.every((source) => newestChange(resolve(root, source)) < time);
}

/** Time of the newest file or folder at or below the path, in ms; a folder's own time shows removed files. */
function newestChange(path: string): number {
  const entry = statSync(path, { throwIfNoEntry: false });
  if (!entry) return 0;
  const below = entry.isDirectory() ? readdirSync(path).map((name) => newestChange(join(path, name))) : [];
  return Math.max(entry.mtimeMs, ...below);
}
