import type { FromPage, Reply } from './messages.ts';

/** The page's end of the search worker; `heard` gets the replies to the last question only. */
export class SearchClient {
  readonly #worker: Worker;
  #turn = 0;

  constructor(worker: Worker, heard: (reply: Reply) => void) {
    this.#worker = worker;
    worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
      if (data.turn === this.#turn) heard(data);
    });
    worker.addEventListener('error', () => heard({ turn: this.#turn, failed: true }));
  }

  ask(query: string): void {
    this.#turn += 1;
    this.#say({ turn: this.#turn, query });
  }

  /** The titles of a reply stand on the page: now its headings may come. */
  titlesShown(turn: number): void {
    this.#say({ turn, titlesShown: true });
  }

  /** Readies the whole index, where that costs no network. */
  readyIndex(): void {
    this.#say({ index: true });
  }

  /** Replies that are on their way come to nothing. */
  forget(): void {
    this.#turn += 1;
  }

  #say(message: FromPage): void {
    this.#worker.postMessage(message);
  }
}
