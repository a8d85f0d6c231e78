import { registerHooks } from 'node:module';
import { relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { takeCollected } from './vitest-in-process.ts';

/** A test of the changed copy of the project, with its place in its file as part of its name. */
export interface LoadedTest {
  id: string;
  body: () => unknown;
}

const standIn = new URL('./vitest-in-process.ts', import.meta.url).href;

/** Node keeps a module for ever, so each loading asks for its modules by another address. */
let loading = 0;

/** Lets the test files of `copy` find the stand-in for Vitest, and its modules be loaded more than once. */
export function installLoading(copy: string): void {
  const own = pathToFileURL(`${copy}/`).href;
  registerHooks({
    resolve(specifier, context, next) {
      if (specifier === 'vitest' && context.parentURL !== standIn) return { url: standIn, shortCircuit: true };
      const found = next(specifier, context);
      const isOwn = found.url.startsWith(own) && !found.url.includes('/node_modules/');
      return isOwn ? { ...found, url: `${found.url}?loading=${loading}` } : found;
    },
  });
}

/** Loads test files, with all that they import, once more. */
export async function loadTests(copy: string, files: readonly string[]): Promise<LoadedTest[]> {
  loading++;
  takeCollected();
  const loaded: LoadedTest[] = [];
  for (const file of files) {
    await import(pathToFileURL(resolve(copy, file)).href);
    const tests = takeCollected();
    for (const [index, { name, body }] of tests.entries()) {
      loaded.push({ id: `${relative(copy, resolve(copy, file))} ${index} ${name}`, body });
    }
  }
  return loaded;
}
