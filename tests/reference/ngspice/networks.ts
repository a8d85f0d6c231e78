import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

export const folder = import.meta.dirname;

/** Names of the netlists beside this file, without ending. */
export const networks = readdirSync(folder)
  .filter((name) => name.endsWith('.cir'))
  .map((name) => name.replace('.cir', ''))
  .sort();

export const hasNgspice = (() => {
  try {
    execFileSync('ngspice', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

/** The resistances in ohms that a netlist prints, by name in lower case as ngspice writes them. */
export function simulate(network: string): Record<string, number> {
  const output = execFileSync('ngspice', ['-b', join(folder, `${network}.cir`)], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const lines = output.matchAll(/^([a-z]+) = ([-+.\de]+)$/gm);
  return Object.fromEntries([...lines].map(([, name = '', value]) => [name, Number(value)]));
}
