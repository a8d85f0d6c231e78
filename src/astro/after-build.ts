import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { gatherShipped, ShippedPackages } from '../shipped/licences.ts';

/**
 * Adds to a finished build what needs all of its pages: the search index, the licences of everything shipped, and the
 * service worker with its list of files.
 */
export function afterBuild(): AstroIntegration {
  let worker: Promise<string>;
  const shipped = new ShippedPackages();
  return {
    name: 'after-build',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        const gather = gatherShipped(shipped);
        updateConfig({ vite: { plugins: [gather], worker: { plugins: () => [gather] } } });
      },
      'astro:build:start': () => {
        // Bundled while the pages are rendered. Its libraries are large, and nothing but a build needs them.
        worker = import('../offline/build-worker.ts').then(({ bundledWorker }) => bundledWorker(shipped));
        // The hook below awaits it and handles the rejection.
        worker.catch(() => undefined);
      },
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        const { writeSearchIndex } = await import('../search/index/search-index.ts');
        logger.info(`The search finds ${await writeSearchIndex(folder)} answers.`);
        // Pagefind writes its own scripts beside the index, so the bundler does not report it.
        shipped.addPackage('pagefind');
        await worker;
        writeFileSync(join(folder, 'licences.txt'), shipped.licences());
        const { addOfflineUse } = await import('../offline/build-worker.ts');
        const { files, bytes } = await addOfflineUse(folder, worker);
        logger.info(`Kept on the device for use without a network: ${files} files, ${bytes} bytes.`);
      },
    },
  };
}
