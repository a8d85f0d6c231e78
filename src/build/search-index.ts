import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { close, createIndex, type NewFileResponse, type PagefindIndex } from 'pagefind';
import type { SearchStart } from '../components/search/library-files.ts';
import { askedMeaning } from '../components/search/words.ts';
import { classicScript } from './classic-script.ts';
import { searchRecords } from './search-records.ts';
import type { ShippedPackages } from './shipped-licences.ts';

/** Files of the search library that no page of this site loads, or that `start.json` stands for. */
const unused =
  /^(pagefind-((ui|modular-ui|component-ui|highlight|worker)\.|entry)|wasm\.unknown|pagefind\.\w+\.pf_meta)/;

/** Files that the texts of all results are spread over: each is fetched alone, and each is one file more to keep. */
const mostFragments = 120;

/**
 * The search index of one build. The library reads each page in a process of its own, on another core, while the build
 * goes on to the next.
 */
export class SearchIndex {
  readonly #index = begun();
  readonly #read: Promise<NewFileResponse>[] = [];

  constructor() {
    for (const { url, content } of searchRecords()) this.add({ url }, content);
  }

  /** Begins to read a page or record; `address` says where it lies in the built site. */
  add(address: { sourcePath: string } | { url: string }, content: string): void {
    this.#read.push(this.#index.then((index) => index.addHTMLFile({ ...address, content })));
  }

  /** Writes the index over all that was read into the built folder; returns how many answers it holds. */
  async write(folder: string, shipped: ShippedPackages): Promise<number> {
    const read = await Promise.all(this.#read);
    const { files, errors } = await (await this.#index).getFiles();
    await close();
    const problems = [...read.flatMap((page) => page.errors), ...errors];
    if (problems.length > 0) throw new Error(problems.join('\n'));
    rmSync(join(folder, 'pagefind'), { recursive: true, force: true });
    for (const { path, content } of files) {
      if (unused.test(path)) continue;
      const target = join(folder, 'pagefind', path);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, content);
    }
    const library = join(folder, 'pagefind/pagefind.js');
    writeFileSync(library, await classicScript(library, 'pagefind', shipped));
    // It writes its own script and program beside the index, so no bundle tells of it.
    shipped.addPackage('pagefind');
    const indexed = files.filter(({ path }) => path.startsWith('fragment/')).flatMap(pagesOf);
    writeFileSync(join(folder, 'pagefind/start.json'), JSON.stringify(startOf(files, indexed)));
    writeFileSync(join(folder, 'pagefind/terms.txt'), [...new Set(indexed.flatMap(termsOf))].join('\n'));
    return indexed.length;
  }
}

async function begun(): Promise<PagefindIndex> {
  const { index, errors } = await createIndex({ maxFragments: mostFragments });
  if (!index) throw new Error(errors.join('\n'));
  return index;
}

/** What the library keeps of one page or record. */
interface Indexed {
  id: string;
  url: string;
  content: string;
  meta: { title?: string; term?: string; row?: string; words?: string; also?: string };
}

/** The words of all answers, the most frequent first: against them the search tells a slip of the keys. */
function wordsOf(indexed: readonly Indexed[]): string[] {
  const counts = new Map<string, number>();
  for (const { content } of indexed) {
    for (const word of content.toLowerCase().match(/(?<![\p{L}\d])\p{L}{4,}(?![\p{L}\d])/gu) ?? [])
      counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return [...counts].sort(([, a], [, b]) => b - a).map(([word]) => word);
}

/** Titles, terms and other words: offered by their spelling where a search finds nothing. */
function termsOf({ meta }: Indexed): string[] {
  const others = [meta.words, meta.term && meta.also].flatMap((list) => list?.split(', ') ?? []);
  const terms = [meta.title ?? meta.term ?? meta.row ?? '', ...others];
  return terms.filter((term) => term !== '' && term !== askedMeaning);
}

interface IndexFile {
  path: string;
  content: Uint8Array;
}

/** What every search needs, in one file: each file more is a wait more before the first answer. */
function startOf(files: readonly IndexFile[], indexed: readonly Indexed[]): SearchStart {
  const file = (name: RegExp) => {
    const found = files.find(({ path }) => name.test(path));
    if (!found) throw new Error(`The index has no file like ${name}.`);
    return { path: found.path, content: Buffer.from(found.content) };
  };
  const table = file(/\.pf_meta$/);
  return {
    contents: file(/^pagefind-entry\.json$/).content.toString(),
    table: { file: table.path, packed: table.content.toString('base64') },
    words: wordsOf(indexed),
    titles: indexed.map(({ id, url, meta }) => [id, url, meta.title ?? meta.term ?? meta.row ?? url]),
  };
}

/** A fragment is JSON behind a mark of the library, compressed: one page, named by the file, or several by their ids. */
function pagesOf({ path, content }: IndexFile): Indexed[] {
  const json = gunzipSync(content)
    .toString()
    .replace(/^pagefind_dcd/, '');
  const parsed: Indexed | Record<string, Indexed> = JSON.parse(json);
  if (typeof parsed.content === 'string') return [{ ...(parsed as Indexed), id: basename(path, '.pf_fragment') }];
  return Object.entries(parsed as Record<string, Indexed>).map(([id, page]) => ({ ...page, id }));
}
