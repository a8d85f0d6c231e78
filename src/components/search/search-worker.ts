import type { Answer } from './answer.ts';
import { Engine } from './engine.ts';
import type { Question, Reply } from './messages.ts';
import { nearestTerms } from './nearest.ts';

// The search runs beside the page, so that typing stays smooth on a slow tablet.

/** The library asks every 50 ms whether it is ready; nothing else in this worker waits for a clock. */
const shortWait = 2;
const wait = self.setTimeout.bind(self);
self.setTimeout = ((work: () => void) => wait(work, shortWait)) as typeof self.setTimeout;

/** The folder of the worker's file lies in the root of the site. */
const siteRoot = new URL('../', self.location.href).pathname;

/** Fetched at once: whoever turns to the search is about to type. */
let engine: Promise<Engine> | undefined = Engine.load(siteRoot);
let newest = 0;

engine.catch(() => {
  engine = undefined;
});

const say = (reply: Reply) => self.postMessage(reply);

self.addEventListener('message', async ({ data: question }: MessageEvent<Question>) => {
  newest = question.turn;
  try {
    // Where the network was gone it may be back.
    engine ??= Engine.load(siteRoot);
    await answer(await engine, question);
  } catch {
    engine = undefined;
    say({ turn: question.turn, failed: true });
  }
});

async function answer(loaded: Engine, { query, turn }: Question): Promise<void> {
  if (turn !== newest) return;
  const { answers, readAs } = await loaded.search(query);
  if (answers.length === 0) return say({ turn, nearest: nearestTerms(query, await knownTerms()) });
  say({ turn, answers: answers.map(({ bare }) => bare), readAs, complete: false });
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
