import type { Folder } from '../../../../src/shop/merge/sync.ts';
import type { Dice } from './dice.ts';

interface Held {
  text: string;
  /** The text that the server had when both last agreed; undefined: it has never been there. */
  base: string | undefined;
  /** Downloaded in part: the rest comes later. */
  whole?: string;
}

/** A file server, and copies of it that a synchronising client brings there late, in part, and with copies in conflict. */
export class Server {
  readonly files = new Map<string, string>();
}

/** The folder of one device. */
export class Replica implements Folder {
  readonly held = new Map<string, Held>();
  private readonly server: Server;
  private readonly name: string;
  private readonly dice: Dice;
  private copies = 0;

  constructor(server: Server, name: string, dice: Dice) {
    this.server = server;
    this.name = name;
    this.dice = dice;
  }

  async files() {
    return [...this.held].map(([name, { text }]) => ({ name, text: this.dice.falls(0.01) ? undefined : text }));
  }

  async write(name: string, text: string): Promise<void> {
    this.held.set(name, { text, base: this.held.get(name)?.base });
  }

  /** The client runs for a moment: it takes some files only, or all. */
  exchange(all: boolean): void {
    for (const name of new Set([...this.held.keys(), ...this.server.files.keys()])) {
      if (all || this.dice.falls(0.4)) this.exchangeFile(name, all);
    }
  }

  private exchangeFile(name: string, all: boolean): void {
    const here = this.held.get(name);
    const there = this.server.files.get(name);
    if (here?.whole !== undefined && here.text !== here.whole) {
      // The rest of a download.
      this.held.set(name, { text: here.whole, base: here.whole });
      return;
    }
    const changedHere = here !== undefined && here.text !== here.base;
    const changedThere = there !== undefined && there !== here?.base;
    if (changedHere && changedThere && here.text !== there) this.inConflict(name, here.text, there);
    else if (changedHere) this.upload(name, here.text);
    else if (changedThere) this.download(name, there, all);
  }

  private inConflict(name: string, mine: string, theirs: string): void {
    const kind = this.dice.next();
    if (kind < 0.5) {
      this.copies += 1;
      const copy = name.replace(/\.json$/, ` (${this.name} in conflict ${this.copies}).json`);
      this.upload(copy, mine);
      this.download(name, theirs, true);
    } else if (kind < 0.75) this.upload(name, mine);
    else this.download(name, theirs, true);
  }

  private upload(name: string, text: string): void {
    this.server.files.set(name, text);
    this.held.set(name, { text, base: text });
  }

  private download(name: string, text: string, whole: boolean): void {
    const cut = whole || !this.dice.falls(0.2) ? text.length : Math.floor(this.dice.next() * text.length);
    const part = text.slice(0, cut);
    this.held.set(name, { text: part, base: part, ...(part !== text && { whole: text }) });
  }
}
