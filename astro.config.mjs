import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { linkTerms, readGlossary } from './src/glossary/link-terms.ts';
import { importCalculator } from './src/markdown/import-calculator.ts';

/** What only the tables print stays out of the modules: a calculator needs the figures, not the remarks. */
const limitsWithoutRemarks = {
  name: 'limits-without-remarks',
  enforce: 'pre',
  transform(json, id) {
    if (!/[\\/]content[\\/]limits[\\/][\w-]+\.json$/.test(id)) return null;
    return JSON.stringify(JSON.parse(json, (key, value) => (key === 'note' || key === 'when' ? undefined : value)));
  },
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
    plugins: [limitsWithoutRemarks],
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
