import { storedTexts, storeTexts } from '../../ui/form/kept-entries.ts';
import type { Action } from '../case/action.ts';
import type { Conclusion } from '../case/conclusion.ts';

/** The case in progress on this device; closing the tab loses nothing. */
export interface KeptCase {
  code: string;
  actions: Action[];
  conclusion?: Conclusion;
}

export function keepCase({ code, actions, conclusion }: KeptCase): void {
  storeTexts(
    'practice',
    { code, actions: JSON.stringify(actions), conclusion: JSON.stringify(conclusion ?? null) },
    'localStorage',
  );
}

/** The stored case; undefined if there is none or it can't be read. */
export function keptCase(): KeptCase | undefined {
  const { code, actions, conclusion } = storedTexts('practice', 'localStorage');
  if (code === undefined || actions === undefined) return undefined;
  try {
    const done: unknown = JSON.parse(actions);
    const ended: Conclusion | null = JSON.parse(conclusion ?? 'null');
    if (!Array.isArray(done)) return undefined;
    return { code, actions: done, ...(ended === null ? {} : { conclusion: ended }) };
  } catch {
    return undefined;
  }
}
