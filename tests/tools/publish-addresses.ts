import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './paths.ts';
import { siteAddresses } from './site-addresses.ts';

/** Adds the addresses of the built site to the list of published ones; removes none. `npm run publish:addresses`. */
const list = join(root, 'tests/content/addresses.txt');
const published = readFileSync(list, 'utf8')
  .split('\n')
  .filter((line) => line !== '');
const all = [...new Set([...published, ...siteAddresses()])].sort();
writeFileSync(list, `${all.join('\n')}\n`);
console.log(`${all.length} addresses, ${all.length - published.length} of them new.`);
