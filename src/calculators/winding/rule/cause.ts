import type { AgainState } from './again.ts';
import type { JointState } from './joint.ts';
import type { LeadHandling } from './leads.ts';
import type { WindingSet } from './set.ts';

/**
 * Why the readings are not alike. `winding`: in what was measured, shown by two sets that fail alike and by no contact
 * of the tips; through the cable that is the winding, a core or the connector. `contact`: something that changes with
 * cleaning, or the mated connector. `open`: not known. `none`: alike.
 */
export type WindingCause = 'winding' | 'contact' | 'none' | 'open';

/**
 * A contact adds to every pair of its terminal, so it can make two pairs high and never one alone. Two pairs high are
 * therefore a matter of the winding only with four leads, which leave the tips out.
 */
export function causeOf(first: WindingSet, again: AgainState, joint: JointState, leads: LeadHandling): WindingCause {
  if (joint === 'bad') return 'contact';
  if (again === 'passes' || again === 'fails' || again === 'differs') return 'contact';
  if (first.verdict === 'go') return again === 'unclear' || joint === 'unclear' ? 'open' : 'none';
  if (again !== 'confirms') return 'open';
  if (first.open.length === 1) return 'contact';
  const high = first.open.length > 0 || first.finite?.odd.side === 'high';
  return high || leads === 'four' ? 'winding' : 'open';
}
