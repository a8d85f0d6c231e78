import { expect } from 'vitest';

/** Stands for Vitest while a change is tried: collects the tests of a file, so that they can be run again and again. */
interface Collected {
  name: string;
  body: () => unknown;
}

// biome-ignore lint/suspicious/noExplicitAny: a row of a table may hold anything.
type Body = (...row: any[]) => unknown;
type Options = number | { timeout?: number };

let suites: string[] = [];
let collected: Collected[] = [];

export const test = Object.assign(
  (name: string, ...rest: (Body | Options)[]) => {
    collected.push({ name: [...suites, name].join(' > '), body: bodyIn(rest) });
  },
  { each },
);
export const it = test;

export const describe = Object.assign(
  (name: string, ...rest: (Body | Options)[]) => {
    suites = [...suites, name];
    bodyIn(rest)();
    suites = suites.slice(0, -1);
  },
  {
    each: (rows: readonly unknown[]) => (name: string, body: Body) => {
      for (const [index, row] of rows.entries()) describe(`${name} ${index}`, () => body(...asRow(row)));
    },
  },
);

export { expect };

/** The tests that were collected since the last call. */
export function takeCollected(): Collected[] {
  const taken = collected;
  collected = [];
  return taken;
}

function each(rows: readonly unknown[]) {
  return (name: string, ...rest: (Body | Options)[]) => {
    for (const [index, row] of rows.entries()) test(`${name} ${index}`, () => bodyIn(rest)(...asRow(row)));
  };
}

const asRow = (row: unknown): unknown[] => (Array.isArray(row) ? row : [row]);

function bodyIn(rest: readonly (Body | Options)[]): Body {
  const body = rest.find((one) => typeof one === 'function');
  if (body === undefined) throw new Error('a test without a body');
  return body;
}
