import { astro } from './run.ts';

/** Builds the site; true when that succeeded. */
export const buildSite = async (): Promise<boolean> => (await astro(['build'])) === 0;
