import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { missedBars } from './bars.ts';
import { sharesOf, tableByCause } from './field-table.ts';
import type { FieldOutcome } from './play-field.ts';

/** Numbers of one run do not meet those of another. */
const apart = 1_000_000;

/** Plays these visits on all cores. `seed` picks the run. */
async function playAll(visits: number, seed: number): Promise<FieldOutcome[]> {
  const cores = availableParallelism();
  const from = seed * apart;
  const parts = Array.from({ length: cores }, (_, core) => playPart(from + core, from + visits, cores));
  return (await Promise.all(parts)).flat();
}

function playPart(from: number, to: number, step: number): Promise<FieldOutcome[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./field-worker.ts', import.meta.url), { workerData: { from, to, step } });
    worker.on('message', resolve);
    worker.on('error', reject);
  });
}

/** Prints the shares of the field mix and its table by cause; true if every bar is met. */
export async function proveField(visits: number, seed: number): Promise<boolean> {
  const outcomes = await playAll(visits, seed);
  console.log(
    `${visits} visits of the field, run ${seed}: causes, axes and people drawn by the weights and shares of content/field.\n` +
      'By cause, in per cent of its visits:\n',
  );
  console.log(tableByCause(outcomes).join('\n'));
  console.log(`\nOf all visits:\n${sharesOf(outcomes).join('\n')}`);
  for (const line of toLookAt(outcomes)) console.log(line);
  const missed = missedBars(outcomes);
  console.log(missed.length === 0 ? 'Every bar is met.' : `Bars missed:\n  ${missed.join('\n  ')}`);
  return missed.length === 0;
}

/** Visits that somebody must look at, each with its fault and its number: unsafe ones, and those with a sound part proven bad. */
function toLookAt(outcomes: readonly FieldOutcome[]): string[] {
  const most = 40;
  const unsafe = outcomes.flatMap(({ unsafe: acts, fault, seed }) =>
    acts.map((act) => `  unsafe: ${act} (${fault}, visit ${seed})`),
  );
  const sound = outcomes.flatMap(({ result, fault, seed, named, bad, slips }) => {
    const slipped = Object.entries(slips).flatMap(([slip, value]) => (value === true ? [slip] : []));
    if (result !== 'sound-proven') return [];
    return [
      `  sound part: ${named.join(', ')} for ${bad.join(', ') || 'nothing'} (${fault}, visit ${seed}; ${slipped.join(' ')})`,
    ];
  });
  return [...unsafe.slice(0, most), ...sound.slice(0, most)];
}
