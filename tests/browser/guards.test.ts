import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axe } from './support/axe.ts';
import { overflowing } from './support/layout.ts';
import { address, newWindow } from './support/open.ts';
import { watch } from './support/watch.ts';

// The checks that all other browser tests lean on, each shown a page that it must not pass.

async function emptyPage(): Promise<Page> {
  const context = await newWindow({ viewport: { width: 360, height: 800 } });
  return context.newPage();
}

test('what goes wrong on a page is noticed', async () => {
  const page = await emptyPage();
  const problems = watch(page, new URL(address('/')).host);
  await page.goto(address('/no/such/page/'));
  // The security policy would stop the request before it starts, so this one comes from a page without it.
  await page.setContent('<html></html>');
  await page.evaluate(async () => {
    console.error('said aloud');
    setTimeout(() => {
      throw new Error('thrown late');
    });
    await fetch('http://other-host.invalid/').catch(() => 0);
  });
  await expect.poll(() => problems.join('\n')).toContain('thrown: thrown late');
  expect(problems.join('\n')).toContain('status 404');
  expect(problems.join('\n')).toContain('console: said aloud');
  expect(problems.join('\n')).toMatch(/asked another host|violates the following Content Security Policy/);
});

test('a page that scrolls sideways names the element', async () => {
  const page = await emptyPage();
  await page.setContent('<div class="wide" style="width: 500px">x</div>');
  expect((await overflowing(page)).join()).toContain('div.wide');
});

test('a table in a scrolling box of its own may be wide', async () => {
  const page = await emptyPage();
  await page.setContent('<div style="overflow-x: auto"><div style="width: 500px">x</div></div>');
  expect(await overflowing(page)).toEqual([]);
});

test('axe reports a button without a name', async () => {
  const page = await emptyPage();
  await page.setContent('<html lang="en"><title>t</title><main><h1>t</h1><button></button></main></html>');
  expect((await axe(page)).join()).toMatch(/^button-name: /);
});
