import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rolldown } from 'vite';

const root = join(import.meta.dirname, '../..');

/** Code that the bundler adds to scripts, by the beginning of its name there, and its package. */
const ofBundler: [start: string, name: string][] = [
  ['\0vite/', 'vite'],
  ['\0rolldown/', 'rolldown'],
  ['\0@oxc-project+runtime', '@oxc-project/runtime'],
];

/** In a licence file, the text after this heading is about packages inside the tool, not in its output. */
const ofBundledTools = /^# Licenses of bundled dependencies$/m;

/** The packages whose code or typefaces are shipped, collected from the actual output of a build. */
export class ShippedPackages {
  readonly #folders = new Map<string, string>();

  /** `id` is a module or file as named by the bundler; anything outside a package is ignored. */
  add(id: string): void {
    const [, before, name] = /^(.*[\\/]node_modules[\\/])((?:@[^\\/]+[\\/])?[^\\/?]+)/.exec(id) ?? [];
    const bundled = ofBundler.find(([start]) => id.startsWith(start))?.[1];
    if (before !== undefined && name !== undefined && !id.startsWith('\0')) this.#folders.set(name, before + name);
    else if (bundled !== undefined) this.addPackage(bundled);
  }

  addPackage(name: string): void {
    this.#folders.set(name, join(root, 'node_modules', name));
  }

  /** Adds the packages in finished chunks and in the files copied beside them. */
  addBundle(outputs: Iterable<Rolldown.OutputChunk | Rolldown.OutputAsset>, what: 'all' | 'assets' = 'all'): void {
    for (const output of outputs) {
      if (output.type === 'asset') for (const file of output.originalFileNames) this.add(join(root, file));
      else if (what === 'all')
        for (const [id, { renderedLength }] of Object.entries(output.modules)) if (renderedLength > 0) this.add(id);
    }
  }

  /** Each package with its version and its full licence. Throws if a package has no licence text. */
  licences(): string {
    const packages = [...this.#folders].sort(([a], [b]) => a.localeCompare(b, 'en')).map(licensed);
    const list = packages.map(({ title }) => `- ${title}`).join('\n');
    const texts = packages.map(({ title, text }) => `${'='.repeat(72)}\n${title}\n${'='.repeat(72)}\n\n${text}`);
    return `${introduction}\n\n${list}\n\n${texts.join('\n\n')}\n`;
  }
}

const introduction =
  'The Overcurrent Fieldbook itself is under the MIT licence. The scripts, the search and the typefaces of its\n' +
  'pages contain these packages of others, each under its own licence, which follows below.';

function licensed([name, folder]: [string, string]): { title: string; text: string } {
  const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  // Some packages keep their texts in a folder of that name.
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /^(licen[cs]e|copying|notice)/i.test(file) && statSync(join(folder, file)).isFile())
    .sort();
  const text = files
    .map((file) => readFileSync(join(folder, file), 'utf8').split(ofBundledTools)[0]?.trim())
    .join('\n\n');
  if (text === '') throw new Error(`${name} reaches the reader, but brings no text of its licence (${license}).`);
  return { title: `${name} ${version} (${license})`, text };
}

/** Collects packages from the pages' scripts and the files beside them. */
export function gatherShipped(shipped: ShippedPackages): Plugin {
  return {
    name: 'gather-shipped',
    generateBundle(_options, bundle) {
      // The scripts that render pages are not shipped, but the typefaces that they name are.
      const what = this.environment.name === 'client' ? 'all' : 'assets';
      shipped.addBundle(Object.values(bundle), what);
    },
  };
}
