import type { Check } from '../../ui/plot/check-rows.ts';

/** What the drawing beside the verdict lists, by the codes of the findings. */
export const brakingChecks: readonly Check[] = [
  { id: 'bus', name: 'Bus before', codes: /^bus-/, missing: /^bus-not-measured$/ },
  {
    id: 'resistor',
    name: 'Resistor',
    codes: /^resistor-/,
    missing: /^resistor-(missing|plate-missing|lead-not-stated)$/,
  },
  { id: 'housing', name: 'To housing', codes: /^housing-/, missing: /-missing$/ },
  { id: 'thermal', name: 'Thermal switch', codes: /^thermal-/, missing: /^thermal-not-stated$/ },
  { id: 'chopper', name: 'Chopper', codes: /^chopper-/, missing: /^chopper-missing$/ },
];
