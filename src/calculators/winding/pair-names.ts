import type { WindingPair } from './rule/pairs.ts';

export const pairNames: Record<WindingPair, string> = { UV: 'U–V', VW: 'V–W', WU: 'W–U' };
