import type { AstroIntegration } from 'astro';
import type { Plugin, ResolvedConfig, Rolldown } from 'vite';

/** Leaves out of a build what costs it time and changes no byte of the site. */
export function leanBuild(): AstroIntegration {
  return {
    name: 'lean-build',
    hooks: {
      'astro:config:setup': ({ config: { vite }, command, updateConfig }) => {
        if (command !== 'build') return;
        // Vite turns JSX into calls by itself: Preact's plugin would parse each of these files a second time.
        for (const plugin of [vite.plugins].flat(3) as Plugin[])
          if (plugin.name === 'vite:preact-jsx') delete plugin.transform;
        updateConfig({ vite: { plugins: [leanBundles] } });
      },
    },
  };
}

const leanBundles: Plugin = {
  name: 'lean-bundles',
  configEnvironment: (name) =>
    name === 'prerender'
      ? {
          build: {
            rolldownOptions: {
              preserveEntrySignatures: 'allow-extension',
              output: { codeSplitting: { groups: [articlesTogether] } },
            },
          },
        }
      : undefined,
  configResolved: bundleNothingBefore,
};

const partOfLibrary = /[\\/]node_modules[\\/]|^astro/;

/**
 * Beside the text of each article Astro makes a small module with the addresses of its styles, and would write two files
 * for each of five hundred articles: seconds of a build. Here all texts share a file. The small modules do so where an
 * article imports no figure or calculator, and so has no styles of its own; the others can't, for Astro fills in the
 * styles once a file.
 */
const articlesTogether: Rolldown.CodeSplittingGroup = {
  test: /\.mdx(\?astroPropagatedAssets)?$/,
  name: (id, chunking) => {
    const [text = id] = id.split('?');
    const imported = chunking.getModuleInfo(text)?.importedIds ?? [];
    return id === text || imported.every((other) => partOfLibrary.test(other)) ? 'articles' : null;
  },
  includeDependenciesRecursively: false,
};

/** Only a server for development profits from libraries that were bundled beforehand. */
function bundleNothingBefore({ optimizeDeps, environments }: ResolvedConfig): void {
  for (const options of [optimizeDeps, ...Object.values(environments).map((environment) => environment.optimizeDeps)])
    options.include = [];
}
