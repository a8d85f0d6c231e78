/** Days by which a yearly test was late, insulation, winding temperature; the newest last. */
const tests: [late: number, insulation: string, temperature: string][] = [
  [0, '1.9 GΩ', '24 °C'],
  [6, '>1 GΩ', '22 °C'],
  [-3, '1.55 GΩ', '26 °C'],
  [3, '1.8 GΩ', '21 °C'],
  [2, '1.3 GΩ', '25 °C'],
  [8, '1.25 GΩ', '23 °C'],
  [27, '980 MΩ', '27 °C'],
  [5, 'OL', '24 °C'],
  [4, '1.05 GΩ', '22 °C'],
  [3, '310 MΩ', '25 °C'],
  [1, '820 MΩ', '24 °C'],
  [7, '760 MΩ', '23 °C'],
];

/**
 * A record of the Lift axis at the Marrow Bay Glassworks; place and figures are invented. It ends some weeks before
 * today, because an old record never gives a go.
 */
export function inventedRecord(now: Date): string {
  const rows = tests.map(([late, insulation, temperature], i) => {
    const day = new Date(now);
    day.setUTCDate(now.getUTCDate() - 60 - 365 * (tests.length - 1 - i) + late);
    return [day.toISOString().slice(0, 10), insulation, temperature].join('\t');
  });
  return ['Date\tInsulation\tWinding temperature', ...rows, ''].join('\n');
}
