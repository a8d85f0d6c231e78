import { describe, expect, inject, test } from 'vitest';
import budgets from '../bench/budgets.json' with { type: 'json' };
import { storeSize } from '../tools/store-size.ts';
import { weighSite } from '../tools/weigh-site.ts';
import { builtPages } from './support/built-pages.ts';
import { browser } from './support/open.ts';

// Bytes are the same on every machine, so they are tested. Times are not: npm run bench prints them.

const pages = await weighSite(await browser(), inject('site'), builtPages());

describe.each(pages)('$path', ({ kind, framework, ...weight }) => {
  test.each(Object.entries(budgets[kind]))(`as ${kind}: %s within %i bytes`, (size, most) => {
    expect(weight[size as keyof typeof weight]).toBeLessThanOrEqual(most);
  });

  test.runIf(kind === 'article' || kind === 'other')('has no script of the framework', () => {
    expect(framework).toEqual([]);
  });
});

test('the pages weighed are of every kind', () => {
  expect(new Set(pages.map(({ kind }) => kind)).size).toBe(5);
});

test('the whole site fits the store of a device', () => {
  expect(storeSize()).toBeLessThanOrEqual(budgets.store.bytes);
});
