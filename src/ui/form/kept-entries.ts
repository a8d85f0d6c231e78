import type { Typed } from '../../kernel/form/field.ts';
import { trueOfTheMoment } from '../../kernel/form/opening.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { continues } from '../../kernel/time/work-pause.ts';

const key = (name: string) => `fieldbook-typed-${name}`;

/** `sessionStorage` belongs to one tab; `localStorage` outlives it. */
type Where = 'sessionStorage' | 'localStorage';

/**
 * Keeps texts by their ids, or forgets them. A browser that refuses storage keeps nothing, and the form works all the
 * same.
 */
export function storeTexts(name: string, typed: Typed | undefined, where: Where): void {
  try {
    if (typed === undefined) globalThis[where].removeItem(key(name));
    else globalThis[where].setItem(key(name), JSON.stringify(typed));
  } catch {
    // Refused or full: see above.
  }
}

/** What was kept, as texts by id; empty where there is nothing that can be used. */
export function storedTexts(name: string, where: Where): Typed {
  try {
    const kept: unknown = JSON.parse(globalThis[where].getItem(key(name)) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([, value]) => typeof value === 'string'));
  } catch {
    return {};
  }
}

const places = ['sessionStorage', 'localStorage'] as const;

/** Keeps the entries of a calculator on this device until they are cleared: for this tab, and for a later one. */
export function keepEntries(name: string, typed: Typed | undefined, now: Date = new Date()): void {
  const before = storedTexts(name, 'sessionStorage');
  const same = typed !== undefined && Object.entries(typed).every(([id, text]) => before[id] === text);
  // What is only shown again was not typed again.
  const keptAt = (same ? before.keptAt : undefined) ?? isoTime(now);
  for (const where of places) storeTexts(name, typed && { ...typed, keptAt }, where);
}

export interface KeptEntries {
  typed: Typed;
  /** When they were typed, as an ISO time. */
  at: string;
  /** The bus voltage or the state of the leads was typed in an earlier stretch of work, and has been left out. */
  outdated: boolean;
}

/** What was kept of a calculator: by this tab, or else by the tab that kept something last. */
export function keptEntries(name: string, now: Date = new Date()): KeptEntries | undefined {
  for (const where of places) {
    const { keptAt, ...typed } = storedTexts(name, where);
    if (keptAt === undefined) continue;
    const stands = continues(keptAt, isoTime(now));
    const kept = Object.entries(typed).filter(([id]) => stands || !trueOfTheMoment.includes(id));
    const outdated = trueOfTheMoment.some((id) => !stands && (typed[id] ?? '') !== '');
    return { typed: Object.fromEntries(kept), at: keptAt, outdated };
  }
  return undefined;
}
