import { astro } from './run.ts';

/**
 * Builds the site, then the search index over the finished pages, then the worker that keeps all of it on the device.
 * True when all succeeded.
 */
export async function buildSite(): Promise<boolean> {
  const pages = astro(['build']);
  // Their libraries are large: read while the pages are built.
  const [{ addSearch }, { slimPages }, { addOfflineUse }] = await Promise.all([
    import('./search-index.ts'),
    import('./slim-pages.ts'),
    import('./offline.ts'),
  ]);
  if ((await pages) !== 0) return false;
  console.log(`The search finds ${await addSearch()} answers.`);
  slimPages();
  const { files, bytes } = await addOfflineUse();
  console.log(`Kept on the device for use without a network: ${files} files, ${bytes} bytes.`);
  return true;
}

if (import.meta.main) process.exitCode = (await buildSite()) ? 0 : 1;
