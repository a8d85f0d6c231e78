import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type ServedSite, serveSite } from '../../tools/serve.ts';

let folder: string;
let site: ServedSite;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fieldbook-serve-'));
  mkdirSync(join(folder, 'tables'));
  writeFileSync(join(folder, 'index.html'), '<h1>Front</h1>');
  writeFileSync(join(folder, '404.html'), '<h1>Not here</h1>');
  writeFileSync(join(folder, 'tables/index.html'), '<h1>Tables</h1>');
  writeFileSync(join(folder, 'mark.svg'), '<svg/>');
  writeFileSync(join(folder, 'index.pf_meta'), 'x');
  site = await serveSite({ folder, base: '/fieldbook/', port: 0, host: 'localhost' });
});

afterAll(async () => {
  await site.close();
  rmSync(folder, { recursive: true });
});

const get = (path: string) => fetch(new URL(path, site.address), { redirect: 'manual' });

describe('the server of the built site', () => {
  test.each([
    ['/fieldbook/', 200, 'text/html;charset=utf-8'],
    ['/fieldbook/tables/', 200, 'text/html;charset=utf-8'],
    ['/fieldbook/mark.svg', 200, 'image/svg+xml'],
    ['/fieldbook/index.pf_meta', 200, 'application/octet-stream'],
    ['/fieldbook/nowhere/', 404, 'text/html; charset=utf-8'],
    ['/elsewhere/', 404, 'text/plain; charset=utf-8'],
  ])('answers %s with %i and %s', async (path, status, type) => {
    const response = await get(path);
    expect([response.status, response.headers.get('content-type')]).toEqual([status, type]);
  });

  test('shows the page for missing pages', async () => {
    expect(await (await get('/fieldbook/nowhere/')).text()).toContain('Not here');
  });

  test.each([
    ['/', '/fieldbook/'],
    ['/fieldbook', '/fieldbook/'],
    ['/fieldbook/tables', '/fieldbook/tables/'],
  ])('leads from %s to %s', async (from, to) => {
    expect((await get(from)).headers.get('location')).toBe(to);
  });

  test('forbids inline script by its security policy', async () => {
    const policy = (await get('/fieldbook/')).headers.get('content-security-policy');
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval';");
    expect(policy).not.toContain('unsafe-inline');
  });

  test('uses a free port if the wanted one is taken', async () => {
    const second = await serveSite({ folder, base: '/', port: site.port, host: 'localhost' });
    expect(second.port).not.toBe(site.port);
    expect(await (await fetch(second.address)).text()).toContain('Front');
    await second.close();
  });

  test('survives a request line that is not an address', async () => {
    await new Promise((done) => {
      const socket = connect(site.port, 'localhost', () => socket.end('GET //[ HTTP/1.1\r\nHost: x\r\n\r\n'));
      socket.resume().on('close', done);
    });
    expect((await get('/fieldbook/')).status).toBe(200);
  });

  test('says what to do without a built site', async () => {
    const empty = join(folder, 'tables/none');
    await expect(serveSite({ folder: empty, base: '/', port: 0 })).rejects.toThrow('npm run build');
  });
});
