import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Netlists of this folder; each has its recording beside it. */
const names = ['locked-rotor', 'short-in-cable', 'path-to-earth'];

/** A recorder that takes a sample each 125 µs, in A with three decimals, the last one at the trip. */
const sampleSeconds = 125e-6;
const firstSeconds = 75e-6;

function recorded(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'fieldbook-ngspice-'));
  try {
    execFileSync('ngspice', ['-b', join(import.meta.dirname, `${name}.cir`)], { cwd: folder, stdio: 'ignore' });
    const rows = readFileSync(join(folder, `${name}.out`), 'utf8')
      .trim()
      .split('\n')
      .slice(1);
    const values = rows.map((row) => row.trim().split(/\s+/).map(Number));
    const samples: string[] = [];
    let next = firstSeconds;
    for (const [time = 0, ...currents] of values) {
      if (time < next - 1e-9) continue;
      samples.push([(time * 1000).toFixed(3), ...currents.map((one) => one.toFixed(3))].join(';'));
      next += sampleSeconds;
    }
    return ['t [ms];iU [A];iV [A];iW [A]', ...samples, ''].join('\n');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

// After a change of a netlist: node tests/reference/trip-trace-ngspice/record.ts
for (const name of names) writeFileSync(join(import.meta.dirname, `${name}.csv`), recorded(name));
