import { networkInterfaces } from 'node:os';
import { buildSite } from './build.ts';
import { siteBase, siteFolder } from './paths.ts';
import { serveSite } from './serve.ts';

// npm start builds and serves; npm run serve (with --built) serves the last build. HOST and PORT choose where.

/** Addresses of this machine for a tablet on the same network. */
function otherAddresses(port: number): string[] {
  const own = Object.values(networkInterfaces()).flatMap((list) => list ?? []);
  return own.filter((a) => a.family === 'IPv4' && !a.internal).map((a) => `http://${a.address}:${port}${siteBase}`);
}

if (!process.argv.includes('--built') && !(await buildSite())) process.exit(1);

const host = process.env.HOST;
const wished = Number(process.env.PORT ?? 4173);
const site = await serveSite({ folder: siteFolder, base: siteBase, port: wished, ...(host && { host }) });

if (site.port !== wished) console.log(`Port ${wished} is taken, so another one was chosen.`);
console.log(`\nThe Overcurrent Fieldbook is at ${site.address}`);
if (!host) for (const address of otherAddresses(site.port)) console.log(`From another device here: ${address}`);
console.log('Press Ctrl+C to stop.');

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => process.exit(0));
