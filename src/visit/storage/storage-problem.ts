import { type Problem, problem, type StorageProblemKind } from '../record/problem.ts';

/** The storage was asked to change its form while an older tab holds it. */
export class HeldByOtherTab extends Error {
  override name = 'HeldByOtherTab';
}

/** There is no storage at all in this browser or window. */
export class NoStorage extends Error {
  override name = 'NoStorage';
}

/** By the name of the exception; browsers differ in their messages and agree in these names. */
const kinds: Record<string, StorageProblemKind> = {
  HeldByOtherTab: 'busy',
  NoStorage: 'no-storage',
  SecurityError: 'no-storage',
  InvalidStateError: 'no-storage',
  NotAllowedError: 'no-storage',
  NotSupportedError: 'no-storage',
  QuotaExceededError: 'full',
  NS_ERROR_DOM_QUOTA_REACHED: 'full',
  VersionError: 'newer-site',
};

/** What a refused request means to the person. Anything that is not known is a plain failure: nothing was changed. */
export function storageProblem(error: unknown): Problem<StorageProblemKind> {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return problem(Object.keys(kinds).includes(name) ? (kinds[name] ?? 'failed') : 'failed');
}
