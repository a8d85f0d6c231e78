import type { BrowserContext } from 'playwright-core';
import { onTestFinished } from 'vitest';
import { below, compat, lacking } from '../../tools/compat.ts';
import { browser } from './open.ts';

/** All that some browser of the targets lacks: objects that stand alone, and properties of others. */
const young = [...below(compat.javascript.builtins), ...below(compat.api)].flatMap(([holder, feature]) =>
  lacking(feature).length > 0
    ? [[holder]]
    : below(feature)
        .filter(([, member]) => lacking(member).length > 0)
        .map(([name]) => [holder, name.replace(/_(static|event)$/, '')]),
);

/** Runs in a page or a worker: takes away what the list names, as far as this browser has it. */
const takeAway = (list: string[][]) => {
  const all = globalThis as unknown as Record<string, Record<string, Record<string, unknown>> | undefined>;
  for (const [holder = '', name] of list) {
    if (name === undefined) delete all[holder];
    else
      for (const place of [
        all[holder]?.prototype,
        all[holder],
        holder === 'Window' ? (all as Record<string, unknown>) : undefined,
      ])
        if (place && Object.getOwnPropertyDescriptor(place, name)?.configurable) delete place[name];
  }
};

/** A window in which scripts find no more than the oldest browsers of the targets have, the search's worker included. */
export async function oldWindow(): Promise<BrowserContext> {
  const context = await (await browser()).newContext({
    serviceWorkers: 'block',
    viewport: { width: 820, height: 1000 },
  });
  onTestFinished(() => context.close());
  await context.addInitScript(takeAway, young);
  await context.route('**/search-worker*.js', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: `(${takeAway})(${JSON.stringify(young)});${await response.text()}` });
  });
  return context;
}
