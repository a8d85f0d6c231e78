import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, onTestFinished, test } from 'vitest';
import { reportFolder } from '../tools/paths.ts';
import { run } from '../tools/run.ts';
import { serveSite } from '../tools/serve.ts';
import { newWindow } from './support/open.ts';
import { typeWords } from './support/search.ts';
import { watch } from './support/watch.ts';

// A school or a plant may serve the site below a folder of its host.

const base = '/fieldbook/';
const folder = join(reportFolder, 'based-site');

beforeAll(async () => {
  const code = await run('npm', ['run', '--silent', 'build'], { SITE_OUT: folder, SITE_BASE: base });
  expect(code, 'the build below a base path').toBe(0);
});

test('every address in every page lies below the base path', () => {
  const astray = globSync('**/*.html', { cwd: folder }).flatMap((file) => {
    const html = readFileSync(join(folder, file), 'utf8');
    const addresses = [...html.matchAll(/\s(?:href|src|action)="(\/[^"]*)"/g)].map((match) => match[1] ?? '');
    return addresses.filter((address) => !address.startsWith(base)).map((address) => `${file}: ${address}`);
  });
  expect(astray).toEqual([]);
});

test('the front page loads below the base path, and its search opens a page below it', async () => {
  const site = await serveSite({ folder, base, port: 0, host: 'localhost' });
  onTestFinished(() => site.close());
  const page = await (await newWindow()).newPage();
  const problems = watch(page, new URL(site.address).host);
  await page.goto(site.address, { waitUntil: 'networkidle' });
  expect(await page.locator('h1').count()).toBe(1);
  await page.keyboard.press('/');
  await typeWords(page, 'loto');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.waitForURL(`${site.address}articles/safety/lockout-and-stored-energy/`);
  expect(problems).toEqual([]);
});

test('below the base path too, pages open without a network', async () => {
  const site = await serveSite({ folder, base, port: 0, host: 'localhost' });
  const page = await (await newWindow()).newPage();
  await page.goto(site.address);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await site.close();
  await page.goto(`${site.address}calculators/bridge/`);
  await page.waitForSelector('[data-live]');
  expect(await page.locator('h1').textContent()).toContain('Bridge');
});
