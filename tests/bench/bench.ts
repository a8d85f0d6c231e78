import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Bench, Measured } from './measured.ts';

// npm run bench -- [part of a file name]: runs the benches of this folder in turn and prints the results.

const wanted = process.argv[2] ?? '';
const folder = import.meta.dirname;

function line({ what, value, unit, budget, least }: Measured): string {
  const figure = `${Number(value.toPrecision(3)).toLocaleString('en')} ${unit}`.trim();
  const bound = budget ?? least;
  if (bound === undefined) return `  ${what.padEnd(64)}${figure.padStart(14)}`;
  const kept = budget === undefined ? value >= bound : value <= bound;
  const aim = `${budget === undefined ? 'at least' : 'at most'} ${bound.toLocaleString('en')} ${unit}`.trim();
  return `  ${what.padEnd(64)}${figure.padStart(14)}   ${kept ? 'kept' : 'MISSED'}: ${aim}`;
}

for (const file of readdirSync(folder).sort()) {
  if (!file.endsWith('.bench.ts') || !file.includes(wanted)) continue;
  const { bench } = (await import(join(folder, file))) as { bench: Bench };
  console.log(`\n${bench.name} (${file})`);
  for (const measured of await bench.run()) console.log(line(measured));
}
