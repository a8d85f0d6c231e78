import type { Typed } from './field.ts';

const key = (name: string) => `fieldbook-typed-${name}`;

/** `localStorage` outlives the tab. */
type Where = 'sessionStorage' | 'localStorage';

/**
 * Keeps what was typed for this tab, so that a reload or a look at an article loses nothing. A browser that refuses
 * storage keeps nothing, and the form works all the same.
 */
export function keepTyped(name: string, typed: Typed | undefined, where: Where = 'sessionStorage'): void {
  try {
    if (typed === undefined) globalThis[where].removeItem(key(name));
    else globalThis[where].setItem(key(name), JSON.stringify(typed));
  } catch {
    // Refused or full: see above.
  }
}

/** What was kept, as texts by field id; empty where there is nothing that can be used. */
export function keptTyped(name: string, where: Where = 'sessionStorage'): Typed {
  try {
    const kept: unknown = JSON.parse(globalThis[where].getItem(key(name)) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([, value]) => typeof value === 'string'));
  } catch {
    return {};
  }
}
