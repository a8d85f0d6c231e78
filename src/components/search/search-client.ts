import type { Question, Reply } from './messages.ts';

/** The page's end of the search worker; `heard` gets the replies to the last question only. */
export class SearchClient {
  readonly #worker = new Worker(new URL('./search-worker.ts', import.meta.url), { type: 'module' });
  readonly #siteRoot: string;
  #turn = 0;

  constructor(siteRoot: string, heard: (reply: Reply) => void) {
    this.#siteRoot = siteRoot;
    this.#worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
      if (data.turn === this.#turn) heard(data);
    });
    this.#worker.addEventListener('error', () => heard({ turn: this.#turn, failed: true }));
    this.#ask({ siteRoot, turn: 0 });
  }

  ask(query: string): void {
    this.#turn += 1;
    this.#ask({ siteRoot: this.#siteRoot, turn: this.#turn, query });
  }

  /** Replies that are on their way come to nothing. */
  forget(): void {
    this.#turn += 1;
  }

  #ask(question: Question): void {
    this.#worker.postMessage(question);
  }
}
