import { existsSync, mkdirSync, mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ShippedPackages } from '../../src/shipped/licences.ts';
import { root, siteFolder } from '../tools/paths.ts';
import { open } from './support/open.ts';

const text = readFileSync(join(siteFolder, 'licences.txt'), 'utf8');
const listed = [...text.matchAll(/^- (\S+) \S+ \(/gm)].map(([, name = '']) => name);

test.each([
  'preact',
  'zod',
  'idb',
  'fflate',
  'uqr',
  'd3-dsv',
  'pagefind',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
  '@fontsource/atkinson-hyperlegible-next',
  '@fontsource/atkinson-hyperlegible-mono',
])('%s, which reaches the reader, is there with its licence', (name) => {
  expect(listed).toContain(name);
  const place = join(root, 'node_modules', name, 'LICENSE');
  const file = statSync(place).isDirectory() ? join(place, 'LICENSE') : place;
  expect(text).toContain(readFileSync(file, 'utf8').trim());
});

test('each package that is listed has a text of its own, and none is a tool of the build alone', () => {
  const parts = text.split(/^={72}$/m);
  expect(parts.length).toBe(1 + 2 * listed.length);
  for (const name of listed) expect(existsSync(join(root, 'node_modules', name)), name).toBe(true);
  expect(listed.filter((name) => ['astro', 'typescript'].includes(name))).toEqual([]);
});

test('a package without a text of its licence stops the build', () => {
  const folder = join(mkdtempSync(join(tmpdir(), 'fieldbook-licence-')), 'node_modules/bare');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ version: '1.0.0', license: 'MIT' }));
  const shipped = new ShippedPackages();
  shipped.add(join(folder, 'index.js'));
  expect(() => shipped.licences()).toThrow('bare reaches the reader, but brings no text of its licence');
});

test('what is no package, and what was left out, counts for nothing', () => {
  const shipped = new ShippedPackages();
  shipped.add(join(root, 'src/calculators/mount.ts'));
  shipped.addBundle([]);
  expect(shipped.licences()).not.toMatch(/^- /m);
});

test('the licences can be reached from the foot of each page', async () => {
  const page = await open('/');
  await page.locator('.site-footer').getByRole('link', { name: 'Licence' }).click();
  await page.waitForURL('**/sources/#licence');
  const href = await page.getByRole('link', { name: 'Each of them, with its licence' }).getAttribute('href');
  expect(href).toBe('/licences.txt');
});
