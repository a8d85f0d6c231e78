import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { launchBrowser } from './browser.ts';
import { buildSite } from './build.ts';
import { isBuildCurrent } from './build-age.ts';
import { reportFolder, siteBase, siteFolder } from './paths.ts';
import { serveSite } from './serve.ts';

// npm run shots -- /tables/ /calculators/bridge/ : pictures and a print PDF of each page, into tests/out/shots.

const widths = [360, 820, 1280];
const schemes = ['light', 'dark'] as const;
const folder = join(reportFolder, 'shots');

async function shoot(browser: Browser, site: string, path: string): Promise<void> {
  const address = new URL(path.replace(/^\//, ''), site).href;
  const name = path.replaceAll(/[^a-z0-9-]+/gi, '_').replaceAll(/^_|_$/g, '') || 'front';
  for (const colorScheme of schemes) {
    const page = await browser.newPage({ colorScheme, reducedMotion: 'reduce' });
    await page.goto(address, { waitUntil: 'networkidle' });
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 });
      await page.screenshot({ path: join(folder, `${name}-${width}-${colorScheme}.png`), fullPage: true });
    }
    if (colorScheme === 'light') await page.pdf({ path: join(folder, `${name}-print.pdf`), format: 'A4' });
    await page.close();
  }
  console.log(`${path} → ${folder}/${name}-*`);
}

const paths = process.argv.slice(2);
if (!isBuildCurrent() && !(await buildSite())) process.exit(1);
mkdirSync(folder, { recursive: true });
const site = await serveSite({ folder: siteFolder, base: siteBase, port: 0, host: 'localhost' });
const server = await launchBrowser();
const browser = await chromium.connect(server.wsEndpoint());
for (const path of paths.length > 0 ? paths : ['/']) await shoot(browser, site.address, path);
await server.close();
await site.close();
