import { createServer } from 'vite';
import { root } from '../tools/paths.ts';

/** Loads a file with components in it, with its styles, as the site's build would; `path` begins at the repository. */
export async function loadComponents<Module>(path: string): Promise<Module> {
  const server = await createServer({
    root,
    configFile: false,
    logLevel: 'silent',
    appType: 'custom',
    server: { middlewareMode: true, hmr: false, watch: null },
    optimizeDeps: { noDiscovery: true },
  });
  try {
    return (await server.ssrLoadModule(path)) as Module;
  } finally {
    await server.close();
  }
}
