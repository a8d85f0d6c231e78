import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { linkTerms, readGlossary } from './src/glossary/link-terms.ts';
import { importCalculator } from './src/markdown/import-calculator.ts';

/** All that runs in a browser, to see which limits it names; what only articles and tables name stays out. */
const browserCode = globSync('src/{calc,texts,guide,record,simulator,practice,islands}/**/*.{ts,tsx}', {
  cwd: import.meta.dirname,
})
  .map((file) => readFileSync(join(import.meta.dirname, file), 'utf8'))
  .join('\n');
const named = (id) => browserCode.includes(`'${id}'`);

const said = new Set(['label', 'status', 'source', 'clause', 'recalled']);
const printed = new Set(['note', 'when']);

/**
 * A calculator needs the figures of the limits, and their words only with a verdict (`?words`). What the tables print
 * beside them stays out of the browser's modules altogether.
 */
const limitsInParts = {
  name: 'limits-in-parts',
  enforce: 'pre',
  transform(json, id) {
    if (!/[\\/]content[\\/]limits[\\/][\w-]+\.json(\?words)?$/.test(id)) return null;
    const words = id.endsWith('?words');
    if (!words && this.environment?.name !== 'client') return null;
    const { limits } = JSON.parse(json);
    const kept = ([key]) => !printed.has(key) && said.has(key) === words;
    const parts = Object.entries(limits)
      .filter(([name]) => named(name))
      .map(([name, limit]) => [name, Object.fromEntries(Object.entries(limit).filter(kept))]);
    const text = JSON.stringify({ limits: Object.fromEntries(parts) });
    return words ? { code: `export default ${text}`, moduleType: 'js' } : text;
  },
};

/** A list of every chunk in every page's first script would cost more than the requests that it saves. */
const noPreloadLists = {
  name: 'no-preload-lists',
  configEnvironment: (name) => (name === 'client' ? { build: { modulePreload: false } } : undefined),
};

// A static host may serve the site below a folder: SITE_BASE=/fieldbook/ npm run build.
const base = process.env.SITE_BASE ?? '/';
const processor = satteri({ mdastPlugins: [importCalculator, linkTerms(readGlossary(import.meta.dirname), base)] });

export default defineConfig({
  base,
  outDir: process.env.SITE_OUT ?? './dist',
  trailingSlash: 'always',
  // The default takes the space away where a line of prose ends before a link.
  compressHTML: true,
  markdown: { processor },
  integrations: [mdx(), preact()],
  build: { inlineStylesheets: 'never' },
  // Nothing inline: the pages must work under a Content-Security-Policy that allows no inline script.
  vite: {
    plugins: [limitsInParts, noPreloadLists],
    build: {
      assetsInlineLimit: 0,
      // Pure modules, so that a calculator loads only the part of src/calc that it uses, though all import its index.
      rolldownOptions: {
        treeshake: { moduleSideEffects: [{ test: /[\\/]src[\\/](calc|texts)[\\/]/, sideEffects: false }] },
      },
    },
  },
  devToolbar: { enabled: false },
});
