import type { Question, Reply } from './messages.ts';

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
    const question: Question = { turn: this.#turn, query };
    this.#worker.postMessage(question);
  }

  /** Replies that are on their way come to nothing. */
  forget(): void {
    this.#turn += 1;
  }
}
