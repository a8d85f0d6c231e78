import { astro } from './run.ts';

process.exitCode = await astro(process.argv.slice(2));
