import { storedTexts, storeTexts } from '../../ui/form/kept-entries.ts';
import type { CaseResult } from '../words/case-result.ts';

const name = 'practice-results';

/** Keeps how a case ended, the first time only: afterwards the person knows its fault. */
export function keepFirstResult(code: string, result: CaseResult): void {
  const kept = storedTexts(name, 'localStorage');
  if (keptResult(code) !== undefined) return;
  storeTexts(name, { ...kept, [code]: JSON.stringify(result) }, 'localStorage');
}

/** How this case ended the first time; undefined if it did not, or if that can't be read. */
export function keptResult(code: string): CaseResult | undefined {
  try {
    const result: unknown = JSON.parse(storedTexts(name, 'localStorage')[code] ?? 'null');
    return isResult(result) ? result : undefined;
  } catch {
    return undefined;
  }
}

function isResult(value: unknown): value is CaseResult {
  if (typeof value !== 'object' || value === null) return false;
  const { word, right, unsafe, unproven, unnecessary } = value as Record<string, unknown>;
  const lists = [unsafe, unproven, unnecessary];
  return typeof word === 'string' && typeof right === 'boolean' && lists.every(Array.isArray);
}
