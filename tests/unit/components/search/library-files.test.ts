import { gzipSync } from 'node:zlib';
import { afterEach, expect, test, vi } from 'vitest';

const files: Record<string, () => Response> = {};
const asked: string[] = [];

/** The module as a worker of `https://site.example/` has it, with the files above on its server. */
async function library() {
  vi.resetModules();
  asked.length = 0;
  vi.stubGlobal('self', {
    location: { href: 'https://site.example/_astro/search-worker.js' },
    fetch: async (path: string) => {
      asked.push(path);
      return files[path]?.() ?? new Response('', { status: 404 });
    },
    DecompressionStream: globalThis.DecompressionStream,
  });
  return import('../../../../src/components/search/library-files.ts');
}

afterEach(() => vi.unstubAllGlobals());

const plain = 'pagefind_dcd and the rest';
const start = {
  contents: '{"version":"1"}',
  table: { file: 'table.pf_meta', packed: gzipSync(plain).toString('base64') },
  words: ['voltage'],
  titles: [['id', '/a/', 'A']],
};
files['/pagefind/start.json'] = () => new Response(JSON.stringify(start));
files['/pagefind/wasm.en.pagefind'] = () => new Response(gzipSync(plain));

test('contents and table come out of the first file, unpacked, and nothing is asked for twice', async () => {
  const { fetchStart, fetchOfLibrary } = await library();
  expect(await fetchStart('/pagefind/')).toEqual(start);
  const text = async (path: string) => (await fetchOfLibrary(path)).text();
  expect(await text('https://site.example/pagefind/pagefind-entry.json?ts=1')).toBe(start.contents);
  expect(await text('/pagefind/table.pf_meta')).toBe(plain);
  expect(await text('/pagefind/wasm.en.pagefind')).toBe(plain);
  expect(asked.sort()).toEqual(['/pagefind/start.json', '/pagefind/wasm.en.pagefind']);
});

test('a file that the server has unpacked stays as it is', async () => {
  files['/pagefind/index/a.pf_index'] = () => new Response(plain);
  const { fetchOfLibrary } = await library();
  expect(await (await fetchOfLibrary('/pagefind/index/a.pf_index')).text()).toBe(plain);
});

test('a browser that can’t unpack leaves it to the library', async () => {
  const packed = gzipSync(plain);
  files['/pagefind/index/b.pf_index'] = () => new Response(packed);
  const { fetchOfLibrary } = await library();
  Reflect.deleteProperty(globalThis.self, 'DecompressionStream');
  const bytes = await (await fetchOfLibrary('/pagefind/index/b.pf_index')).arrayBuffer();
  expect(Buffer.from(bytes)).toEqual(packed);
});

test('what is not there is told as it is, and a second try asks again', async () => {
  const { fetchStart, fetchOfLibrary } = await library();
  delete files['/pagefind/start.json'];
  await expect(fetchStart('/pagefind/')).rejects.toThrow();
  files['/pagefind/start.json'] = () => new Response(JSON.stringify(start));
  expect((await fetchStart('/pagefind/')).words).toEqual(['voltage']);
  expect((await fetchOfLibrary('/pagefind/none.pf_index')).status).toBe(404);
});
