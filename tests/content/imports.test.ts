import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { filesOf } from './support/files.ts';

/**
 * What each folder may import besides itself; a longer name takes precedence. Everything but the kernel may import
 * `content` and packages. Type imports count too.
 */
const mayImport: Record<string, readonly string[]> = {
  // What is shipped: oldest browsers, licences, classic scripts.
  'src/shipped': [],
  // Pure: no framework, no DOM. From the bottom up.
  'src/kernel/limits.ts': [],
  'src/kernel/reading': ['src/kernel/limits.ts'],
  'src/kernel/time': ['src/kernel/limits.ts'],
  'src/kernel/electrics': ['src/kernel/limits.ts', 'src/kernel/reading'],
  'src/kernel/assessment': ['src/kernel/limits.ts', 'src/kernel/reading', 'src/kernel/electrics'],
  'src/kernel/words': [
    'src/kernel/limits.ts',
    'src/kernel/limit-labels.ts',
    'src/kernel/reading',
    'src/kernel/electrics',
    'src/kernel/assessment',
  ],
  'src/kernel/form': ['src/kernel'],
  'src/kernel/link': ['src/kernel/limits.ts'],
  'src/kernel': [],
  'src/ui': ['src/kernel'],
  'src/site/parts': ['src/kernel', 'src/ui', 'src/site/memo-per-build.ts', 'src/site/styles'],
  // This calculator judges the same output stage as `bridge`.
  'src/calculators/bridge-diode': ['src/kernel', 'src/ui', 'src/calculators', 'src/site/parts'],
  'src/calculators': ['src/kernel', 'src/ui', 'src/site/parts'],
  'src/visit/guide': ['src/kernel', 'src/calculators', 'src/visit/steps'],
  'src/visit/steps': ['src/kernel', 'src/calculators', 'src/visit/guide'],
  'src/visit/words': ['src/kernel', 'src/visit/guide', 'src/visit/steps'],
  'src/visit/restart': ['src/kernel', 'src/visit/guide', 'src/visit/steps'],
  'src/visit/record': ['src/kernel', 'src/calculators', 'src/visit/guide', 'src/visit/steps'],
  'src/visit/storage': ['src/kernel', 'src/visit/record', 'src/visit/waiting.ts'],
  'src/visit/report': ['src/kernel', 'src/ui', 'src/calculators', 'src/visit'],
  'src/visit/app': ['src/kernel', 'src/ui', 'src/calculators', 'src/visit'],
  'src/visit': [
    'src/kernel',
    'src/calculators',
    'src/visit/guide',
    'src/visit/steps',
    'src/visit/words',
    'src/visit/record',
  ],
  'src/axes/record': ['src/kernel', 'src/visit/record', 'src/visit/steps'],
  'src/axes/history': ['src/kernel', 'src/calculators', 'src/visit', 'src/axes/record'],
  'src/axes/words': ['src/kernel', 'src/calculators', 'src/visit', 'src/axes/record', 'src/axes/history'],
  'src/axes': ['src/kernel', 'src/ui', 'src/calculators', 'src/visit'],
  'src/call/rule': ['src/kernel', 'src/visit/guide', 'src/visit/steps', 'src/visit/words'],
  'src/call': ['src/kernel', 'src/ui', 'src/visit'],
  'src/shop/merge': ['src/kernel', 'src/visit/record', 'src/axes/record'],
  'src/shop/file': ['src/kernel', 'src/visit', 'src/axes/record', 'src/shop/merge'],
  'src/shop': ['src/kernel', 'src/ui', 'src/visit', 'src/axes'],
  'src/practice/simulator': ['src/kernel'],
  'src/practice': ['src/kernel', 'src/ui', 'src/calculators', 'src/visit'],
  'src/offline': ['src/kernel', 'src/ui', 'src/shipped'],
  'src/search': [
    ...['src/kernel', 'src/ui', 'src/shipped'],
    ...['src/library/glossary/glossary-schema.ts', 'src/library/tables/limit-schema.ts'],
  ],
  'src/site': ['src/kernel', 'src/ui', 'src/search/box', 'src/offline'],
  'src/library': ['src/kernel', 'src/ui', 'src/calculators', 'src/visit', 'src/practice', 'src/site'],
  'src/content.config.ts': ['src/library'],
  // The build steps and the addresses of the site, above everything.
  'src/astro': ['src'],
  'src/pages': ['src'],
};

const folders = Object.keys(mayImport);

/** Static, side-effect and dynamic imports, of types too, of modules and of styles. */
const patterns = [
  /^\s*(?:import|export)\s[^'";]*?\bfrom\s+'([^']+)'/gm,
  /^\s*(?:@?import)\s+'([^']+)'/gm,
  /\bimport\(\s*'([^']+)'/g,
];

interface Import {
  file: string;
  target: string;
}

const files = filesOf('src/**/*.{ts,tsx,astro,css}');
const imports: Import[] = files.flatMap(({ path, text }) =>
  patterns
    .flatMap((pattern) => [...text.matchAll(pattern)])
    .map(([, found = '']) => {
      const target = found.split('?')[0] ?? '';
      return { file: path, target: target.startsWith('.') ? join(dirname(path), target) : target };
    }),
);

const within = (path: string, folder: string) => path === folder || path.startsWith(`${folder}/`);
const folderOf = (path: string) => folders.find((folder) => within(path, folder)) ?? '';

/** The slice of a file: each folder below `calculators` is one, and imports no other. */
function isOwn(file: string, target: string): boolean {
  const own = folderOf(file);
  if (!within(target, own)) return false;
  const [, , slice, inside] = file.split('/');
  if (own !== 'src/calculators' || inside === undefined) return true;
  const [, , other, otherInside] = target.split('/');
  return other === slice || otherInside === undefined || other === 'frame';
}

test('each file is in a folder that a rule names', () => {
  expect(files.map(({ path }) => path).filter((path) => folderOf(path) === '')).toEqual([]);
});

test('what is imported exists', () => {
  const inside = imports.filter(({ target }) => /^(src|content)\//.test(target));
  expect(inside.length).toBeGreaterThan(1500);
  expect(inside.filter(({ target }) => !existsSync(target))).toEqual([]);
});

test('imports point one way: kernel ← ui ← calculators ← visit ← practice; the site around them', () => {
  const wrong = imports.filter(
    ({ file, target }) =>
      within(target, 'src') &&
      !isOwn(file, target) &&
      !(mayImport[folderOf(file)] ?? []).some((allowed) => within(target, allowed)),
  );
  expect(wrong).toEqual([]);
});

test('inside a calculator: rule ← words ← form ← view', () => {
  const floor = (path: string) => {
    const name = path.split('/').slice(3).join('/');
    if (name.startsWith('rule/')) return 0;
    if (/(^|-)(words|names)\.ts$/.test(name)) return 1;
    return /\.(tsx|astro|css)$/.test(name) ? 3 : 2;
  };
  const wrong = imports.filter(
    ({ file, target }) =>
      /^src\/calculators\/[^/]+\//.test(file) &&
      dirname(target).startsWith('src/calculators/') &&
      floor(target) > floor(file),
  );
  expect(wrong).toEqual([]);
});

test('the kernel, the rules, the guide and the simulator are pure: they import only data and their own files', () => {
  const pure =
    /^src\/(kernel\/(?!link|form)|calculators\/[^/]+\/rule|visit\/(?:guide|steps|evaluate)|practice\/simulator)/;
  const outside = imports.filter(({ file, target }) => pure.test(file) && !/^(src|content)\//.test(target));
  expect(outside).toEqual([]);
});

test('nothing imports a page', () => {
  expect(imports.filter(({ target }) => within(target, 'src/pages'))).toEqual([]);
});

test('only practice imports the simulator, so that no real reading can come from it', () => {
  const users = imports.filter(({ target }) => within(target, 'src/practice/simulator')).map(({ file }) => file);
  expect(users.filter((file) => !within(file, 'src/practice'))).toEqual([]);
});

test('there are no circles', () => {
  const byFile = new Map<string, string[]>();
  for (const { file, target } of imports) {
    if (within(target, 'src')) byFile.set(file, [...(byFile.get(file) ?? []), target]);
  }
  const settled = new Set<string>();
  const circles: string[][] = [];
  const walk = (file: string, way: readonly string[]): void => {
    const at = way.indexOf(file);
    if (at >= 0) circles.push([...way.slice(at), file]);
    if (at >= 0 || settled.has(file)) return;
    for (const target of byFile.get(file) ?? []) walk(target, [...way, file]);
    settled.add(file);
  };
  for (const file of byFile.keys()) walk(file, []);
  expect(circles).toEqual([]);
});
