import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { axisNetwork } from '../../../src/practice/simulator/axis-network.ts';
import { dischargeCases, dischargeSeconds, restCases } from './cases.ts';
import { chargeCases } from './field-cases.ts';
import { dischargeDeck, restDeck } from './netlist.ts';

export type Recorded = Record<string, Record<string, number>>;

/**
 * The voltages of every case by ngspice, in volts by name. Each reading has its own deck: many at once do not always
 * converge.
 */
export function simulateAll(): Recorded {
  const rest = restCases.map(({ name, celsius, asked }): [string, Record<string, number>] => [
    name,
    Object.assign({}, ...asked.map((one) => simulate(restDeck(name, celsius, [one])))),
  ]);
  const discharge = dischargeCases.map(({ name, axis, state }): [string, Record<string, number>] => [
    name,
    simulate(dischargeDeck(name, state.airCelsius, axisNetwork(axis, state), dischargeSeconds)),
  ]);
  const charge = chargeCases.map(({ name, celsius, elements, seconds, position }): [string, Record<string, number>] => [
    name,
    simulate(dischargeDeck(name, celsius, elements, seconds, position)),
  ]);
  return Object.fromEntries([...rest, ...discharge, ...charge]);
}

export function simulate(deck: string): Record<string, number> {
  const folder = mkdtempSync(join(tmpdir(), 'fieldbook-ngspice-'));
  try {
    const file = join(folder, 'deck.cir');
    writeFileSync(file, deck);
    const output = execFileSync('ngspice', ['-b', file], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    const found = output.matchAll(/^([a-z]+\d*)\s*=\s*([-+.\de]+)/gm);
    return Object.fromEntries([...found].map(([, name = '', value]) => [name, Number(value)]));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

// Run again after a change of the model: node tests/reference/simulator-ngspice/record.ts
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(join(import.meta.dirname, 'recorded.json'), `${JSON.stringify(simulateAll(), null, 2)}\n`);
}
