import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { filesOf } from './support/files.ts';

/** What each folder of src may import from other folders of src; its own files always. */
const allowed: Record<string, string[]> = {
  schemas: [],
  glossary: ['schemas'],
  calc: ['schemas'],
  kernel: [],
  guide: ['visit', 'kernel', 'calc'],
  texts: ['visit', 'guide', 'calc'],
  record: ['visit', 'guide', 'calc'],
  visit: ['islands', 'components', 'texts', 'record', 'guide', 'calc'],
  simulator: ['calc'],
  practice: ['simulator', 'visit', 'guide', 'record', 'calc'],
  styles: [],
};

/** Static, side-effect and dynamic imports; `import type` carries no code and may point anywhere. */
const patterns = [
  /^\s*(?:import|export)\s+(?!type\b)[^'";]*?\bfrom\s+'([^']+)'/gm,
  /^\s*import\s+'([^']+)'/gm,
  /\bimport\(\s*'([^']+)'/g,
];

interface Import {
  file: string;
  folder: string;
  target: string;
}

const imports: Import[] = filesOf('src/**/*.{ts,tsx,astro}').flatMap(({ path, text }) =>
  patterns
    .flatMap((pattern) => [...text.matchAll(pattern)])
    .map((match) => {
      const target = match[1] ?? '';
      const resolved = target.startsWith('.') ? join(dirname(path), target) : target;
      return { file: path, folder: path.split('/')[1] ?? '', target: resolved };
    }),
);

test('imports point one way: pages → islands → record, texts → guide → calc', () => {
  const wrong = imports.filter(({ folder, target }) => {
    const rule = allowed[folder];
    const [top, other = ''] = target.split('/');
    return rule !== undefined && top === 'src' && other !== folder && !rule.includes(other);
  });
  expect(wrong).toEqual([]);
});

test('what a visit asks and rules is pure: of the islands its steps take the calculators’ forms, and nothing else', () => {
  const steps = imports.filter(
    ({ file, target }) => file.startsWith('src/visit/') && target.startsWith('src/islands/'),
  );
  expect(
    steps.map(({ target }) => target).filter((target) => !/\/form\.ts$|^src\/islands\/form\/[\w-]+\.ts$/.test(target)),
  ).toEqual([]);
});

test('nothing imports the simulator but practice: nobody measures an invented axis by mistake', () => {
  const users = imports.filter(({ folder, target }) => target.startsWith('src/simulator/') && folder !== 'simulator');
  expect([...new Set(users.map(({ folder }) => folder))]).toEqual(['practice']);
});

test('nothing imports a page', () => {
  expect(imports.filter(({ target }) => target.startsWith('src/pages/'))).toEqual([]);
});

test('the calculation module imports only data, types and its own files', () => {
  const packages = imports.filter(({ folder, target }) => folder === 'calc' && !/^(src|content)\//.test(target));
  expect(packages).toEqual([]);
});
