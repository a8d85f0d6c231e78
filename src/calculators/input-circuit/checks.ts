import type { Check } from '../../ui/plot/check-rows.ts';

/** What the drawing beside the verdict lists, by the codes of the findings. */
export const inputChecks: readonly Check[] = [
  { id: 'bus', name: 'Bus before', codes: /^bus-/, missing: /^bus-not-measured$/ },
  { id: 'fuses', name: 'Fuses', codes: /^fuses?-/, missing: /-missing$/ },
  { id: 'rectifier', name: 'Rectifier', codes: /^rectifier-/, missing: /-missing$/ },
  { id: 'link', name: 'DC+ to DC−', codes: /^link-/, missing: /^link-(missing|climb-not-stated)$/ },
  { id: 'precharge', name: 'Precharge', codes: /^precharge-/, missing: /^precharge-(missing|inside|none)$/ },
];
