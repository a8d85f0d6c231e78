import { shopFormatAt } from '../../../../src/shop/file/shop-format.ts';
import type { Content } from '../../../../src/shop/merge/content.ts';
import { syncFolder } from '../../../../src/shop/merge/sync.ts';
import { Dice } from './dice.ts';
import { Replica, Server } from './shared-drive.ts';
import { Tablet, wordsOf } from './tablet.ts';

export interface RunResult {
  /** What is wrong; empty: nothing was lost. */
  problems: string[];
  changes: number;
  /** How often both versions of a visit were kept. */
  apart: number;
  keptAfterDeletion: number;
}

/** Two tablets and their shared folder: `changes` changes at random, then rest until both have exchanged everything. */
export async function runShop(seed: number, changes: number): Promise<RunResult> {
  const shop = new Shop(seed);
  while (shop.changes < changes) await shop.step();
  await shop.rest();
  return { problems: shop.problems(), changes, apart: shop.apart, keptAfterDeletion: shop.kept };
}

interface Place {
  tablet: Tablet;
  folder: Replica;
  /** Deleted here, for undo. */
  bin: Content[];
}

class Shop {
  changes = 0;
  apart = 0;
  kept = 0;
  private readonly dice: Dice;
  private readonly places: Place[];
  /** Every word that was typed, by the visit in which it was. */
  private readonly typed = new Map<string, string>();
  /** Words that somebody deleted with a visit in which they stood. */
  private readonly deleted = new Set<string>();
  /** Visits that were deleted by somebody who had seen every word of them. */
  private readonly gone = new Set<string>();
  /** Where visits were restored: a deletion on the other tablet may not have seen it, and then yields to it. */
  private readonly restored = new Map<string, Set<Tablet>>();
  private readonly format = shopFormatAt(() => '2026-03-03T08:00:00Z');

  constructor(seed: number) {
    this.dice = new Dice(seed);
    const server = new Server();
    server.files.set('holiday.jpg.json', '[1, 2');
    this.places = ['tablet-a', 'tablet-number-b'].map((name) => ({
      tablet: new Tablet(name),
      folder: new Replica(server, name, this.dice),
      bin: [],
    }));
    for (const { tablet } of this.places) {
      tablet.meanwhile = () => {
        if (this.dice.falls(0.05)) this.write(tablet);
      };
    }
  }

  async step(): Promise<void> {
    const place = this.dice.of(this.places) as Place;
    const kind = this.dice.next();
    if (kind < 0.1) this.begin(place.tablet);
    else if (kind < 0.6) this.write(place.tablet);
    else if (kind < 0.66) this.remove(place);
    else if (kind < 0.68) this.undo(place);
    else if (kind < 0.86) await this.sync(place);
    else place.folder.exchange(false);
  }

  /** Nobody changes anything: each device exchanges until nothing more comes. */
  async rest(): Promise<void> {
    for (const { tablet } of this.places) tablet.meanwhile = () => undefined;
    for (let turn = 0; turn < 6; turn += 1) {
      for (const place of this.places) {
        place.folder.exchange(true);
        place.folder.exchange(true);
        await this.sync(place);
        place.folder.exchange(true);
      }
    }
  }

  problems(): string[] {
    const problems: string[] = [];
    const [a, b] = this.places.map(({ tablet }) => tablet.prints().join('\n'));
    if (a !== b) problems.push('the two tablets differ');
    for (const { tablet } of this.places) {
      const there = tablet.words();
      for (const word of this.typed.keys()) {
        if (!there.has(word) && !this.deleted.has(word)) problems.push(`${tablet.name} has lost ${word}`);
      }
      for (const id of this.gone) if (tablet.visits.has(id)) problems.push(`${tablet.name} has ${id} again`);
    }
    return problems;
  }

  private word(id: string): string {
    const word = `word-of-run-${this.typed.size}`;
    this.typed.set(word, id);
    this.gone.delete(id);
    this.changes += 1;
    return word;
  }

  private begin(tablet: Tablet): void {
    const id = `visit-${this.typed.size}-${tablet.name}`;
    tablet.begin(id, this.word(id));
  }

  private write(tablet: Tablet): void {
    const id = this.dice.of([...tablet.visits.keys()]);
    if (id === undefined) return;
    const pictures = tablet.visits.get(id)?.photographs ?? [];
    if (pictures.length < 20 && this.dice.falls(0.15)) tablet.attach(id, this.word(id));
    else tablet.write(id, this.word(id));
  }

  private remove({ tablet, bin }: Place): void {
    const visit = this.dice.of([...tablet.visits.values()]);
    if (visit === undefined) return;
    tablet.visits.delete(visit.id);
    bin.push(visit);
    this.changes += 1;
    const words = wordsOf(visit);
    for (const word of words) this.deleted.add(word);
    const all = [...this.typed].filter(([, id]) => id === visit.id).map(([word]) => word);
    const restoredHereOnly = [...(this.restored.get(visit.id) ?? [])].every((place) => place === tablet);
    if (restoredHereOnly && all.every((word) => words.includes(word))) this.gone.add(visit.id);
  }

  private undo({ tablet, bin }: Place): void {
    const visit = bin.pop();
    if (visit === undefined || tablet.visits.has(visit.id)) return;
    tablet.visits.set(visit.id, visit);
    this.gone.delete(visit.id);
    this.restored.set(visit.id, (this.restored.get(visit.id) ?? new Set()).add(tablet));
    this.changes += 1;
  }

  private async sync({ tablet, folder }: Place): Promise<void> {
    const { apart, keptAfterDeletion } = await syncFolder(tablet, folder, this.format);
    this.apart += apart.length;
    this.kept += keptAfterDeletion.length;
  }
}
