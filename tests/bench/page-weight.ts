import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { siteBase, siteFolder } from '../tools/paths.ts';

/** Bytes that a first visit of a page moves, without headers. */
export interface PageWeight {
  /** All of it but typefaces, brotli. */
  withoutFonts: number;
  withFonts: number;
  /** Scripts alone, in brotli and in gzip. */
  script: number;
  scriptGzip: number;
  style: number;
  html: number;
  requests: number;
  /** The framework's modules among the scripts; empty if the page has no interactive part. */
  framework: string[];
}

/** Quality 9: hosts compress on the fly with less, ahead of time with more. */
const brotli = (data: Buffer) => brotliCompressSync(data, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }).length;
/** Typefaces and pictures with points are compressed already. */
const packed = /\.(woff2|png|pf_\w+|pagefind)$/;

/**
 * Opens the page in a window without stored files or worker and weighs every file that it requests until the network is
 * idle.
 */
export async function weighPage(page: Page, address: string): Promise<PageWeight> {
  const asked = new Set<string>();
  page.on('response', (response) => asked.add(new URL(response.url()).pathname));
  await page.goto(address, { waitUntil: 'networkidle' });
  return weigh([...asked].map((path) => fileOf(decodeURIComponent(path))));
}

function fileOf(path: string): string {
  return path.slice(siteBase.length).replace(/(^|\/)$/, '$1index.html');
}

/** Weighs files of the built site, given by their paths within it. */
export function weigh(files: readonly string[]): PageWeight {
  const parts = files.map((file) => {
    const data = readFileSync(join(siteFolder, file));
    return { file, bytes: packed.test(file) ? data.length : brotli(data), gzip: gzipSync(data).length };
  });
  const sum = (pattern: RegExp, size: 'bytes' | 'gzip' = 'bytes') =>
    parts.filter(({ file }) => pattern.test(file)).reduce((total, part) => total + part[size], 0);
  return {
    withoutFonts: sum(/(?<!\.woff2)$/),
    withFonts: sum(/$/),
    script: sum(/\.m?js$/),
    scriptGzip: sum(/\.m?js$/, 'gzip'),
    style: sum(/\.css$/),
    html: sum(/\.html$/),
    requests: files.length,
    framework: files.filter((file) => /preact|hooks\.module|signals|jsxRuntime/.test(file)),
  };
}
