import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { afterBuild } from './src/astro/after-build.ts';
import { importParts } from './src/astro/import-parts.ts';
import { limitsForReaders } from './src/astro/limits-for-readers.ts';
import { linkTerms, readGlossary } from './src/library/glossary/link-terms.ts';
import { buildTargets } from './src/shipped/targets.ts';

/**
 * Scripts for the reader are built for the oldest supported browsers, unlike the code that renders pages. A list of
 * every chunk in every page's first script would cost more than the requests that it saves. Astro overrides the plain
 * setting `environments.client`, so this is the hook for it.
 */
const forReaders = {
  name: 'for-readers',
  configEnvironment: (name) =>
    name === 'client' ? { build: { target: buildTargets, modulePreload: false } } : undefined,
};

/** Pages that have become part of another one. */
const movedPages = {
  'measuring/how-sure-is-a-reading': 'measuring/choosing-the-limit',
  'measuring/insulation-hook-ups': 'measuring/choosing-the-limit',
  'measuring/multimeter-or-insulation-tester': 'safety/instruments-and-leads',
  'measuring/temperature-moisture-and-time': 'measuring/choosing-the-limit',
  'measuring/reading-a-trend': 'deciding/baseline-and-record',
  'safety/qualified-and-permitted': 'safety/protective-equipment-and-arc-flash',
  'trip/causes-of-an-overcurrent-trip': 'trip/when-it-trips',
  'trip/what-the-drive-means': 'trip/find-the-drive-and-axis',
  'deciding/drive-or-power-module': 'trip/output-stage-failure',
  'deciding/why-not-swap': 'deciding/motor-and-cable-together',
};

// A static host may serve the site below a folder: SITE_BASE=/fieldbook/ npm run build.
const base = process.env.SITE_BASE ?? '/';

const processor = satteri({ mdastPlugins: [importParts, linkTerms(readGlossary(import.meta.dirname), base)] });

export default defineConfig({
  base,
  outDir: process.env.SITE_OUT ?? './dist',
  trailingSlash: 'always',
  redirects: Object.fromEntries(
    Object.entries(movedPages).map(([from, to]) => [`/articles/${from}/`, `${base}articles/${to}/`]),
  ),
  // The default removes the space if a line of prose ends before a link.
  compressHTML: true,
  // No article shows code, and reading the colours of a dozen languages takes time.
  markdown: { processor, syntaxHighlight: false },
  integrations: [
    mdx(),
    // Only these hold JSX, so the other files need no second parse.
    preact({ include: ['**/*.tsx'] }),
    afterBuild(),
  ],
  build: { inlineStylesheets: 'never' },
  // Nothing inline: the pages must work under a Content-Security-Policy that allows no inline script.
  vite: {
    plugins: [forReaders, limitsForReaders],
    build: {
      cssTarget: buildTargets,
      assetsInlineLimit: 0,
      rolldownOptions: {
        // Astro puts a directive of its own into every article, and each would be a warning of ten lines.
        checks: { moduleLevelDirective: false },
      },
    },
  },
  devToolbar: { enabled: false },
});
