import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import sirv from 'sirv';
import { securityHeaders } from './security-policy.ts';

interface ServeOptions {
  /** The built site. */
  folder: string;
  /** The base path, with a slash at both ends. */
  base: string;
  /** The wanted port; 0 or a used one gives a free one. */
  port: number;
  /** Leave out to listen on every interface, so that a tablet on the same network can open it. */
  host?: string;
  /** `idle`: the worker does nothing, so that a page doesn't fetch the whole site for offline use. */
  worker?: 'real' | 'idle';
  /** Awaited before a file is sent, by its path below the base: a slow network. */
  delay?: (path: string) => Promise<void> | undefined;
}

export interface ServedSite {
  /** Address of the front page on this machine, with a slash at the end. */
  address: string;
  port: number;
  close: () => Promise<void>;
}

/** Serves a built site like a plain static host. Fails if the folder has no site. */
export async function serveSite({ folder, base, port, host, worker, delay }: ServeOptions): Promise<ServedSite> {
  if (!existsSync(join(folder, 'index.html'))) throw new Error(`No built site in ${folder}: run npm run build first.`);
  const files = sirv(folder, { etag: true, brotli: true, setHeaders });
  const server = createServer(async (request, response) => {
    const path = withinBase(request, response, base);
    if (path === undefined) return;
    if (isFolderWithoutSlash(folder, path)) return redirect(response, `${base}${path.slice(1)}/`);
    if (worker === 'idle' && path === '/sw.js') return idleWorker(response);
    await delay?.(path);
    request.url = path;
    files(request, response, () => notFound(response, folder));
  });
  const bound = await listen(server, port, host);
  return {
    address: `http://localhost:${bound}${base}`,
    port: bound,
    close: () => new Promise((done) => server.close(() => done()).closeAllConnections()),
  };
}

/** The path below the base, or undefined if the request has been answered. */
function withinBase(request: IncomingMessage, response: ServerResponse, base: string): string | undefined {
  // A request line without a valid address gives an empty path, which has no base.
  const { pathname = '', search = '' } = URL.parse(`http://localhost${request.url}`) ?? {};
  if (pathname.startsWith(base)) return `/${pathname.slice(base.length)}`;
  if (`${pathname}/` === base || pathname === '/') redirect(response, base + search);
  else response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`The site is at ${base}\n`);
  return undefined;
}

/** Articles link to each other with the slash; without it, relative addresses would be wrong. */
function isFolderWithoutSlash(folder: string, path: string): boolean {
  if (path.endsWith('/') || path.includes('..')) return false;
  return statSync(join(folder, path), { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function redirect(response: ServerResponse, to: string): void {
  response.writeHead(302, { Location: to }).end();
}

function notFound(response: ServerResponse, folder: string): void {
  const page = join(folder, '404.html');
  const body = existsSync(page) ? readFileSync(page) : 'Page not found\n';
  const type = existsSync(page) ? 'text/html; charset=utf-8' : 'text/plain; charset=utf-8';
  response.writeHead(404, { 'Content-Type': type, ...securityHeaders }).end(body);
}

function idleWorker(response: ServerResponse): void {
  response.writeHead(200, { 'Content-Type': 'text/javascript', ...securityHeaders }).end('// does nothing\n');
}

function setHeaders(response: ServerResponse, path: string): void {
  for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
  // The search index has its own file endings, which no list of types has.
  if (/\.(pagefind|pf_\w+)$/.test(path)) response.setHeader('Content-Type', 'application/octet-stream');
}

function listen(server: Server, port: number, host: string | undefined): Promise<number> {
  return new Promise((done, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' && port !== 0) done(listen(server, 0, host));
      else fail(error);
    });
    server.listen(port, host, () => done((server.address() as AddressInfo).port));
  });
}
