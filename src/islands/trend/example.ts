/** Month and day, insulation, winding temperature; one row a year, the newest last. */
const tests = `05-12\t1.9 GΩ\t24 °C
05-18\t>1 GΩ\t22 °C
05-09\t1.55 GΩ\t26 °C
05-15\t1.8 GΩ\t21 °C
05-14\t1.3 GΩ\t25 °C
05-20\t1.25 GΩ\t23 °C
06-08\t980 MΩ\t27 °C
05-17\tOL\t24 °C
05-16\t1.05 GΩ\t22 °C
05-15\t310 MΩ\t25 °C
05-13\t820 MΩ\t24 °C
05-19\t760 MΩ\t23 °C`.split('\n');

/**
 * A record of the Lift axis at the Marrow Bay Glassworks; place and figures are invented. Its last year is that of the
 * last May: an old record gives no go, whatever it holds.
 */
export function inventedRecord(today = new Date()): string {
  const lastYear = today.getFullYear() - (today < new Date(today.getFullYear(), 4, 20) ? 1 : 0);
  const rows = tests.map((row, i) => `${lastYear + 1 - tests.length + i}-${row}`);
  return ['Date\tInsulation\tWinding temperature', ...rows, ''].join('\n');
}
