import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration, AstroPrerenderer } from 'astro';
import type { SearchIndex } from './search-index.ts';
import { gatherShipped, ShippedPackages } from './shipped-licences.ts';

/**
 * What a build does with its pages: the search reads each as soon as it is rendered. After the last page come the
 * search index, the licences of all that reaches the reader, and the worker that keeps all of it on the device.
 */
export function finishPages(): AstroIntegration {
  let index: Promise<SearchIndex>;
  let offline: Promise<typeof import('./offline-store.ts')>;
  let worker: Promise<string>;
  let base = '/';
  const shipped = new ShippedPackages();
  return {
    name: 'finish-pages',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        const gather = gatherShipped(shipped);
        updateConfig({ vite: { plugins: [gather], worker: { plugins: () => [gather] } } });
      },
      'astro:config:done': ({ config }) => {
        base = config.base.replace(/\/?$/, '/');
      },
      'astro:build:start': ({ setPrerenderer }) => {
        // Their libraries are large, and nothing but a build needs them.
        index = import('./search-index.ts').then(({ SearchIndex }) => new SearchIndex());
        offline = import('./offline-store.ts');
        worker = offline.then(({ bundledWorker }) => bundledWorker(shipped));
        // Whoever waits for it hears of the failure.
        worker.catch(() => undefined);
        setPrerenderer((renderer) => finishing(renderer, base, index));
      },
      'astro:build:done': async ({ dir, logger }) => {
        const folder = fileURLToPath(dir);
        logger.info(`The search finds ${await (await index).write(folder, shipped)} answers.`);
        await worker;
        writeFileSync(join(folder, 'licences.txt'), shipped.licences());
        const { files, bytes } = await (await offline).addOfflineUse(folder, worker);
        logger.info(`Kept on the device for use without a network: ${files} files, ${bytes} bytes.`);
      },
    },
  };
}

function finishing(renderer: AstroPrerenderer, base: string, index: Promise<SearchIndex>): AstroPrerenderer {
  return {
    ...renderer,
    name: 'finish-pages',
    async render(request, options) {
      const rendered = await renderer.render(request, options);
      const { response } = rendered instanceof Response ? { response: rendered } : rendered;
      if (!response.headers.get('content-type')?.startsWith('text/html')) return rendered;
      const html = await response.clone().text();
      const path = decodeURI(new URL(request.url).pathname).slice(base.length);
      (await index).add({ sourcePath: path.replace(/(^|\/)$/, '$1index.html') }, html);
      return rendered;
    },
  };
}
