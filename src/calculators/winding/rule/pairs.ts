export type WindingPair = 'UV' | 'VW' | 'WU';

export const windingPairs: readonly WindingPair[] = ['UV', 'VW', 'WU'];
