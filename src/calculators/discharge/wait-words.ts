import type { LimitId } from '../../kernel/limits.ts';

/** Shown beside every number of this calculator, on screen, on paper and in a plot. */
export const onlyTheMeter =
  'A computed time never replaces the measurement. Only a meter that was proven before and after tells that the bus is dead.';

/** What each published limit means, shown beside its figure. */
export const waitNames: Partial<Record<LimitId, string>> = {
  'residual-voltage-60': 'machines',
  'capacitor-voltage-50': 'power capacitors',
  'touch-voltage': 'work on conductors',
  'residual-charge-exempt': 'exempt charge',
};
