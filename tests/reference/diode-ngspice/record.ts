import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { diodeCases, simulateDiodeCase } from './cases.ts';

// Run again after a change of the model: node tests/reference/diode-ngspice/record.ts
const recorded = Object.fromEntries(diodeCases.map((one) => [one.name, simulateDiodeCase(one)]));
writeFileSync(join(import.meta.dirname, 'recorded.json'), `${JSON.stringify(recorded, null, 2)}\n`);
