import { cpSync, globSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';

/** A copy of a built site with each text compressed beside it, as hosts send them; gone when the process ends. */
export function compressedCopy(folder: string): string {
  const copy = mkdtempSync(join(tmpdir(), 'fieldbook-compressed-'));
  process.on('exit', () => rmSync(copy, { recursive: true, force: true }));
  cpSync(folder, copy, { recursive: true });
  for (const file of globSync('**/*.{html,css,js,svg,json,txt,webmanifest}', { cwd: copy })) {
    const path = join(copy, file);
    writeFileSync(`${path}.br`, brotliCompressSync(readFileSync(path)));
  }
  return copy;
}
