import { join } from 'node:path';
import { build } from 'vite';
import type { ShippedPackages } from './licences.ts';
import { buildTargets } from './targets.ts';

const root = join(import.meta.dirname, '../..');

/**
 * Bundles a module with its imports into one classic script: in several supported browsers workers can't be modules.
 * `name` is its global variable. Packages in it are added to `shipped`.
 */
export async function classicScript(entry: string, name: string, shipped: ShippedPackages): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'warn',
    root,
    publicDir: false,
    define: { 'process.env.NODE_ENV': '"production"' },
    build: { write: false, target: buildTargets, lib: { entry, formats: ['iife'], name, fileName: () => 'script.js' } },
  });
  const [output] = [result].flat();
  if (!output || !('output' in output)) throw new Error(`${entry} was not built.`);
  shipped.addBundle(output.output);
  return output.output[0].code;
}
