import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { folder, networks, simulate } from './networks.ts';

// Run again after a change of a netlist: node tests/reference/ngspice/record.ts
const recorded = Object.fromEntries(networks.map((network) => [network, simulate(network)]));
writeFileSync(join(folder, 'recorded.json'), `${JSON.stringify(recorded, null, 2)}\n`);
