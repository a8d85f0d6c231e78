import { limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';

const minutes = () => formatRounded(limitValue('baseline-minutes'), 'min');

/** What the page of an axis says before a baseline visit is begun. */
export const baselineOffer = () =>
  `A baseline is a visit to a sound axis: the readings worth having, in about ${minutes()} after the waiting time, dead and locked out as in any visit. Later readings of this axis, and of others with the same motor, are shown beside it.`;
