import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../tools/paths.ts';
import { filesOf } from './support/files.ts';

// `npm run audit` asks the registry about weaknesses; these tests need no registry.

interface Locked {
  resolved?: string;
  integrity?: string;
  hasInstallScript?: boolean;
  license?: string;
  link?: boolean;
}

const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const packages: [path: string, Locked][] = Object.entries<Locked>(
  JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages,
).filter(([path]) => path !== '');

/** Packages in the reader's browser. */
const shipped = [
  'preact',
  'idb',
  'fflate',
  'ts-fsrs',
  'uqr',
  'zod',
  'pagefind',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
  '@fontsource/atkinson-hyperlegible-next',
  '@fontsource/atkinson-hyperlegible-mono',
];

/** `@scope/name/part` and `name/part` belong to the packages `@scope/name` and `name`. */
const packageOf = (target: string) => target.split('/', target.startsWith('@') ? 2 : 1).join('/');

test('every package that a file imports, for its types alone too, is declared', () => {
  const declared = Object.keys(manifest.devDependencies);
  const imported = filesOf('{astro.config.mjs,{src,tests}/**/*.{ts,tsx,astro}}').flatMap(({ path, text }) =>
    [...text.matchAll(/^(?:import|export|\} from)\b(?:.* from)? ?'((?!node:|astro:|\.)[^']+)'/gm)].map(
      ([, target = '']) => ({ path, name: packageOf(target) }),
    ),
  );
  expect(imported.length).toBeGreaterThan(100);
  const undeclared = imported.filter(({ name }) => !declared.includes(name) && !declared.includes(`@types/${name}`));
  expect(undeclared).toEqual([]);
});

describe('the lockfile', () => {
  test('takes every package from the npm registry, pinned by its hash', () => {
    // Without an address the package comes from npm's configured registry; its hash identifies it.
    const elsewhere = (address = 'https://registry.npmjs.org/') => !address.startsWith('https://registry.npmjs.org/');
    const astray = packages.filter(
      ([, { resolved, integrity, link }]) => link || elsewhere(resolved) || !integrity?.startsWith('sha512-'),
    );
    expect(astray.map(([path]) => path)).toEqual([]);
  });

  test('lets only allowed packages run a script at installation', () => {
    const allowed = Object.keys(manifest.allowScripts);
    const running = packages.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path);
    // Optional packages for other systems, such as file watchers, are not installed here.
    const unknown = running.filter((path) => !allowed.some((name) => path.endsWith(`node_modules/${name}`)));
    expect(unknown.filter((path) => !path.endsWith('/fsevents'))).toEqual([]);
  });

  test.each(shipped)('%s, which reaches the reader, has a permissive licence', (name) => {
    const entry = packages.find(([path]) => path === `node_modules/${name}`);
    expect(entry?.[1].license).toMatch(/^(MIT|ISC|Apache-2\.0|OFL-1\.1|BSD-\d-Clause)$/);
  });
});
