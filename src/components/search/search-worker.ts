import type { Answer } from './answer.ts';
import { Engine, type Found } from './engine.ts';
import { fetchOfLibrary } from './library-files.ts';
import type { FromPage, Reply } from './messages.ts';
import { nearestTerms } from './nearest.ts';

// The search runs beside the page, so that typing stays smooth on a slow tablet.

/** The library asks every 50 ms whether it is ready; nothing else in this worker waits for a clock. */
const shortWait = 2;
const wait = self.setTimeout.bind(self);
self.setTimeout = ((work: () => void) => wait(work, shortWait)) as typeof self.setTimeout;

self.fetch = fetchOfLibrary as typeof self.fetch;

/** The folder of the worker's file lies in the root of the site. */
const siteRoot = new URL('../', self.location.href).pathname;

/** Fetched at once: whoever turns to the search is about to type. */
let engine: Promise<Engine> | undefined = Engine.load(siteRoot);
let newest = 0;
/** The newest answers whose titles were said. */
let found: (Found & { turn: number }) | undefined;

const warm = engine.then((loaded) => (newest === 0 ? loaded.warmUp() : undefined));
warm.catch(() => {
  engine = undefined;
});

const say = (reply: Reply) => self.postMessage(reply);

self.addEventListener('message', async ({ data: message }: MessageEvent<FromPage>) => {
  if ('index' in message) return void readyIndex().catch(() => undefined);
  const { turn } = message;
  try {
    if ('titlesShown' in message) return await complete(turn);
    newest = turn;
    // Where the network was gone it may be back.
    engine ??= Engine.load(siteRoot);
    await answer(await engine, message.query, turn);
  } catch {
    engine = undefined;
    say({ turn, failed: true });
  }
});

/** After all that a first word needs. */
async function readyIndex(): Promise<void> {
  await warm;
  await (await engine)?.readyIndex();
}

/** Titles alone: they are there at once. */
async function answer(loaded: Engine, query: string, turn: number): Promise<void> {
  if (turn !== newest) return;
  const { answers, readAs } = await loaded.search(query);
  if (turn !== newest) return;
  found = { turn, answers, readAs };
  if (answers.length === 0) return say({ turn, nearest: nearestTerms(query, await knownTerms()) });
  say({ turn, answers: answers.map(({ bare }) => bare), readAs, complete: false });
}

/** The texts wait until the page shows the titles: on two slow cores they would hold up the first frame. */
async function complete(turn: number): Promise<void> {
  if (found?.turn !== turn) return;
  const { answers, readAs } = found;
  const whole: Answer[] = [];
  for (const one of answers) {
    if (turn !== newest) return;
    whole.push(await one.whole());
  }
  say({ turn, answers: whole, readAs, complete: true });
}

async function knownTerms(): Promise<string[]> {
  return (await (await fetch(`${siteRoot}pagefind/terms.txt`)).text()).split('\n');
}
