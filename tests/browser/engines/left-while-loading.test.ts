import { expect, onTestFinished, test } from 'vitest';
import { siteBase, siteFolder } from '../../tools/paths.ts';
import { serveSite } from '../../tools/serve.ts';
import { type Engine, eachEngine } from './each-engine.ts';

// A page that is left while a part of it still loads, and comes back from the browser's cache: the part comes then.

/** The page from a server that answers the first request for a file whose path matches only after `answer()`. */
async function openWhereLate(engine: Engine, page: string, late: RegExp) {
  let asked = 0;
  let answer = () => {};
  const answered = new Promise<void>((done) => {
    answer = done;
  });
  const site = await serveSite({
    folder: siteFolder,
    base: siteBase,
    port: 0,
    host: 'localhost',
    worker: 'idle',
    delay: (path) => {
      if (!late.test(path)) return undefined;
      asked += 1;
      return asked === 1 ? answered : undefined;
    },
  });
  onTestFinished(() => site.close());
  return { tab: await engine.openAgain(page, { site: site.address }), asked: () => asked, answer };
}

eachEngine((engine) => {
  test.each([
    ['a verdict', /judge-insulation\.[\w-]+\.js$/],
    ['a drawing', /InsulationPlot\.[\w-]+\.js$/],
  ])('%s comes when the page is shown again', async (_what, file) => {
    const { tab, asked, answer } = await openWhereLate(engine, '/calculators/insulation/', file);
    await tab.see('[data-live]');
    await tab.click({ button: 'Fill in the worked visit' });
    await expect.poll(asked).toBe(1);
    await tab.go('/tables/');
    await tab.back();
    answer();
    await tab.see('.verdict[data-verdict="no-go"]');
    await tab.see('.verdict figure');
    expect(await tab.text('.verdict')).not.toContain('could not be loaded');
  });

  test('the search answers when the page is shown again', async () => {
    const { tab, asked, answer } = await openWhereLate(engine, '/tables/', /pagefind-entry\.json$/);
    await tab.click('[data-ready] input[type="search"]');
    await expect.poll(asked).toBe(1);
    await tab.go('/glossary/');
    await tab.back();
    answer();
    await tab.fill('[data-ready] input[type="search"]', 'lockout');
    await tab.see('[data-search-panel] a');
  });
});
