import { Engine } from './engine.ts';
import type { Question, Reply } from './messages.ts';
import { type KnownTerm, nearestTerms } from './nearest.ts';

// The search runs beside the page, so that typing stays smooth on a slow tablet.

let engine: Promise<Engine> | undefined;
let newest = 0;

const say = (reply: Reply) => self.postMessage(reply);

self.addEventListener('message', async ({ data }: MessageEvent<Question>) => {
  newest = data.turn;
  try {
    engine ??= Engine.load(data.siteRoot);
    await answer(await engine, data);
  } catch {
    // The next question tries again: the network may be back.
    engine = undefined;
    if (data.query !== undefined) say({ turn: data.turn, failed: true });
  }
});

async function answer(loaded: Engine, { query, turn, siteRoot }: Question): Promise<void> {
  if (query === undefined || turn !== newest) return;
  const { answers, readAs } = await loaded.search(query);
  const [best, ...others] = answers;
  if (!best) return say({ turn, nearest: nearestTerms(query, await knownTerms(siteRoot)) });
  const shown = [await best()];
  say({ turn, answers: shown, readAs, complete: others.length === 0 });
  for (const other of others) {
    if (turn !== newest) return;
    shown.push(await other());
  }
  if (others.length > 0) say({ turn, answers: shown, readAs, complete: true });
}

async function knownTerms(siteRoot: string): Promise<KnownTerm[]> {
  const terms: KnownTerm[] = await (await fetch(`${siteRoot}pagefind/terms.json`)).json();
  return terms.map(([text, url]) => [text, siteRoot.replace(/\/$/, '') + url]);
}
