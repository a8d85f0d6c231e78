import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
// Not from its index, which brings a compiler along for a worker of its own.
import { injectManifest } from 'workbox-build/build/inject-manifest.js';
import { classicScript } from './classic-script.ts';
import type { ShippedPackages } from './shipped-licences.ts';

const root = join(import.meta.dirname, '../..');

/** What the built folder holds for others than the pages themselves: it is fetched when somebody asks for it. */
const notNeededOffline = /^(schema\/|robots\.txt$|sitemap)/;

/** The service worker as one script, still without its list of files. */
export const bundledWorker = (shipped: ShippedPackages) =>
  classicScript(join(root, 'src/offline/service-worker.ts'), 'worker', shipped);

/**
 * Writes the service worker with the list of all files of the finished site, the search index among them. The files
 * are listed by the address that people open and with their hash, so that no file of another version gets in.
 */
export async function addOfflineUse(
  folder: string,
  worker: Promise<string>,
): Promise<{ files: number; bytes: number }> {
  const made = mkdtempSync(join(tmpdir(), 'fieldbook-worker-'));
  const script = join(made, 'sw.js');
  writeFileSync(script, await worker);
  const result = await injectManifest({
    swSrc: script,
    swDest: join(folder, 'sw.js'),
    globDirectory: folder,
    globPatterns: ['**/*'],
    globIgnores: ['sw.js'],
    maximumFileSizeToCacheInBytes: 8_000_000,
    manifestTransforms: [
      (entries) => ({ manifest: entries.filter(needed).map((entry) => listed(entry, folder)), warnings: [] }),
    ],
  });
  rmSync(made, { recursive: true, force: true });
  for (const warning of result.warnings) console.warn(warning);
  return { files: result.count, bytes: result.size };
}

const needed = ({ url }: { url: string }) => !notNeededOffline.test(url);

/** `articles/x/index.html` is opened as `articles/x/`; asking a host for the file itself may be redirected. */
function listed<E extends { url: string }>(
  entry: E,
  folder: string,
): E & { revision: string | null; integrity: string } {
  const hash = createHash('sha256').update(readFileSync(join(folder, entry.url)));
  const integrity = `sha256-${hash.digest('base64')}`;
  const url = entry.url.replace(/(^|\/)index\.html$/, '$1') || './';
  // A file that carries its own hash in its name needs no second one.
  const revision = entry.url.startsWith('_astro/') ? null : integrity.slice(7, 23);
  return { ...entry, url, revision, integrity };
}
