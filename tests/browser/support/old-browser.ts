import type { BrowserContext } from 'playwright-core';
import { below, compat, lacking } from '../../tools/compat.ts';
import { newWindow } from './open.ts';

/** The driver of the browser itself needs these in the page. */
const neededByDriver = ['BigInt64Array', 'BigUint64Array'];

/** All that some browser of the targets lacks: objects that stand alone, and properties of others. */
const all = [...below(compat.javascript.builtins), ...below(compat.api)];
const young = all
  .filter(([holder]) => !neededByDriver.includes(holder))
  .flatMap(([holder, feature]) =>
    lacking(feature).length > 0
      ? [[holder]]
      : below(feature)
          .filter(([, member]) => lacking(member).length > 0)
          .map(([name]) => [holder, name]),
  );

/** Runs in a page or a worker: takes away what the list names, as far as this browser has it. */
const takeAway = (list: string[][]) => {
  const all = globalThis as unknown as Record<string, Record<string, Record<string, unknown>> | undefined>;
  for (const [holder = '', name] of list) {
    if (name === undefined) delete all[holder];
    else {
      const plain = name.replace(/_static$/, '');
      const own = all[holder];
      // What the data call static belongs to the object itself; what a window has belongs to the one window.
      const places =
        plain === name
          ? [own?.prototype, own, holder === 'Window' ? (all as Record<string, unknown>) : undefined]
          : [own];
      for (const place of places)
        if (place && Object.getOwnPropertyDescriptor(place, plain)?.configurable) delete place[plain];
    }
  }
};

/** A window in which scripts find no more than the oldest browsers of the targets have, the search's worker included. */
export async function oldWindow(): Promise<BrowserContext> {
  const context = await newWindow({
    serviceWorkers: 'block',
    viewport: { width: 820, height: 1000 },
  });
  await context.addInitScript(takeAway, young);
  await context.route('**/pagefind/pagefind-worker.js', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: `(${takeAway})(${JSON.stringify(young)});${await response.text()}` });
  });
  return context;
}
