import { resolve } from 'node:path';

/** The folder of the repository. */
export const root = resolve(import.meta.dirname, '../..');

/** The built site; SITE_OUT changes the folder, as in astro.config.mjs. */
export const siteFolder = resolve(root, process.env.SITE_OUT ?? 'dist');

/** The base path of the site, with a slash at both ends; SITE_BASE as in astro.config.mjs. */
export const siteBase = `/${process.env.SITE_BASE ?? ''}/`.replaceAll(/\/+/g, '/');

/** Reports, screenshots and other results of the tests; git ignores it. */
export const reportFolder = resolve(root, 'tests/out');
