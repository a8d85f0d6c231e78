// How the search worker gets the library's files. What every search needs is on its way before the library's own script
// has been read, in as few files as possible; what is packed is unpacked by the browser, many times quicker than by that
// script.

/** What stands in `start.json`, written after the index was built. */
export interface SearchStart {
  /** The library's list of contents, as its own file holds it. */
  contents: string;
  /** The library's table of words, still packed, in base64, and the name of its file. */
  table: { file: string; packed: string };
  /** All words of the site, the most frequent first. */
  words: string[];
  /** Of each answer its id, path and title, in the order of these. */
  titles: [string, string, string][];
}

/** Files of the index that the library keeps packed. */
const packed = /\.(?:pagefind|pf_meta|pf_index|pf_fragment)$/;

/** Where the site's language has another program the library asks for that itself. */
const program = 'wasm.en.pagefind';

const fromSite = self.fetch.bind(self);
const ahead = new Map<string, Promise<Response>>();

/** Takes the place of `fetch` in a worker in which nothing but the search fetches. */
export async function fetchOfLibrary(address: string): Promise<Response> {
  // The library adds the time of day to one address; the file is the same.
  const path = new URL(address, self.location.href).pathname;
  const response = ahead.get(path) ?? get(path);
  // A body is read once: a second try fetches anew.
  ahead.delete(path);
  return response;
}

/** Begins to fetch what each search needs. `folder` is the path of the index, with a slash at its end. */
export async function fetchStart(folder: string): Promise<SearchStart> {
  keep(folder + program, get(folder + program));
  const start = get(`${folder}start.json`).then((response) => response.json() as Promise<SearchStart>);
  keep(
    `${folder}pagefind-entry.json`,
    start.then(({ contents }) => new Response(contents)),
  );
  const { table } = await start;
  keep(folder + table.file, unpacked(Uint8Array.from(atob(table.packed), (sign) => sign.charCodeAt(0))));
  return start;
}

function keep(path: string, response: Promise<Response>): void {
  // Whoever takes it hears of the failure.
  response.catch(() => undefined);
  ahead.set(path, response);
}

async function get(path: string): Promise<Response> {
  const response = await fromSite(path);
  return packed.test(path) && response.ok ? unpacked(new Uint8Array(await response.arrayBuffer())) : response;
}

/** Untouched where the server has unpacked it already, and where the browser can't. */
async function unpacked(bytes: Uint8Array<ArrayBuffer>): Promise<Response> {
  const isPacked = bytes[0] === 0x1f && bytes[1] === 0x8b;
  if (!isPacked || !('DecompressionStream' in self)) return new Response(bytes);
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(await new Response(stream).arrayBuffer());
}
