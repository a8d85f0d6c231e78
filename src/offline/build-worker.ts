import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { classicScript } from '../shipped/classic-script.ts';
import type { ShippedPackages } from '../shipped/licences.ts';

const root = join(import.meta.dirname, '../..');

/** Placeholder for the list of files in the worker's source, as Workbox documents it. */
const placeOfList = 'self.__WB_MANIFEST';

/** Files of the built folder that the pages don't need, so the device does not keep them. */
const notNeededOffline = /^(\.|schema\/|robots\.txt$|sitemap|sw\.js$)/;

/** The service worker as one script, still without its list of files. */
export const bundledWorker = (shipped: ShippedPackages) =>
  classicScript(join(root, 'src/offline/service-worker.ts'), 'worker', shipped);

/**
 * Writes the service worker with the list of all files of the finished site, the search index among them. The list has
 * the address that people open and the hash, so that no file of another version gets in.
 */
export async function addOfflineUse(
  folder: string,
  worker: Promise<string>,
): Promise<{ files: number; bytes: number }> {
  const parts = (await worker).split(placeOfList);
  if (parts.length !== 2) throw new Error(`The worker should name ${placeOfList} once, not ${parts.length - 1} times.`);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll(sep, '/'))
    .filter((file) => !notNeededOffline.test(file) && statSync(join(folder, file)).isFile())
    .sort()
    .map((file) => ({ file, content: readFileSync(join(folder, file)) }));
  const list = files.map(({ file, content }) => listed(file, content));
  writeFileSync(join(folder, 'sw.js'), parts.join(JSON.stringify(list)));
  return { files: files.length, bytes: files.reduce((sum, { content }) => sum + content.length, 0) };
}

/** `articles/x/index.html` is opened as `articles/x/`; a host may redirect requests for the file itself. */
function listed(file: string, content: Buffer): { url: string; revision: string | null; integrity: string } {
  const hash = createHash('sha256').update(content).digest('base64');
  const url = file.replace(/(^|\/)index\.html$/, '$1') || './';
  // A file with a hash in its name needs no second one.
  const revision = file.startsWith('_astro/') ? null : hash.slice(0, 16);
  return { url, revision, integrity: `sha256-${hash}` };
}
