import { astro } from './run.ts';

/** Builds the site; true on success. */
export const buildSite = async (): Promise<boolean> => (await astro(['build'])) === 0;
