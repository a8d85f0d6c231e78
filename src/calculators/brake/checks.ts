import type { Check } from '../../ui/plot/check-rows.ts';

/** What the drawing beside the verdict lists, by the codes of the findings. */
export const brakeChecks: readonly Check[] = [
  { id: 'bus', name: 'Bus before', codes: /^bus-/, missing: /^bus-not-measured$/ },
  {
    id: 'coil',
    name: 'Coil',
    codes: /^brake-(coil-|plate-|electronics$|circuit-)/,
    missing: /^brake-(coil-missing|coil-temperature-missing|plate-missing|circuit-not-stated)$/,
  },
  {
    id: 'cores',
    name: 'Cores',
    codes: /^brake-(core|cable-)/,
    missing: /^brake-(cores-not-measured|cable-not-stated)$/,
  },
  { id: 'supply', name: 'Voltage at it', codes: /^brake-(supply|drop)-/, missing: /^brake-supply-missing$/ },
  {
    id: 'release',
    name: 'Release',
    codes: /^brake-(opens|stays-shut|drags|release-not-tried)$/,
    missing: /^brake-release-not-tried$/,
  },
];
