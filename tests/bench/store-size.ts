import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { siteFolder } from '../tools/paths.ts';

/** Uncompressed bytes of all files that the worker of the built site keeps on the device. */
export function storeSize(folder = siteFolder): number {
  const worker = readFileSync(join(folder, 'sw.js'), 'utf8');
  const urls = [...worker.matchAll(/"url":"([^"]+)"/g)].map(([, url = '']) => url);
  if (urls.length === 0) throw new Error('sw.js lists no files');
  return urls.reduce((sum, url) => sum + statSync(join(folder, fileOf(url))).size, 0);
}

function fileOf(url: string): string {
  return url.endsWith('/') ? `${url}index.html` : url;
}
