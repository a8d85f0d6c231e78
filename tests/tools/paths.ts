import { resolve } from 'node:path';

/** The folder of the repository. */
export const root = resolve(import.meta.dirname, '../..');

/** Where the built site lies; SITE_OUT moves it, as in astro.config.mjs. */
export const siteFolder = resolve(root, process.env.SITE_OUT ?? 'dist');

/** The path that the site is served below, with a slash at both ends; SITE_BASE as in astro.config.mjs. */
export const siteBase = `/${process.env.SITE_BASE ?? ''}/`.replaceAll(/\/+/g, '/');

/** Reports, screenshots and other results of the tests; git ignores it. */
export const reportFolder = resolve(root, 'tests/out');
