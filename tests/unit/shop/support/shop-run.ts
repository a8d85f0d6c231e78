import { shopFormatAt } from '../../../../src/shop/file/shop-format.ts';
import type { Content, Picture } from '../../../../src/shop/merge/content.ts';
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

/**
 * Two tablets and their shared folder: `changes` changes at random, then rest until both have exchanged everything. `hours`:
 * by which the clock of the second tablet is ahead of the first one's, or behind if negative.
 */
export async function runShop(seed: number, changes: number, hours = 1): Promise<RunResult> {
  const shop = new Shop(seed, hours);
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
  /** Visits of which both versions were kept. */
  private readonly keptTwice = new Set<string>();
  /** Visits that were kept although the other tablet had deleted them. */
  private readonly outvoted = new Set<string>();
  /** Visits of which a photograph was taken off: a deletion on the other tablet may not have seen it, and then yields. */
  private readonly thinned = new Set<string>();
  /** The words of the caption of a photograph. */
  private readonly captions = new Map<string, string[]>();
  /** Photographs that a person took off with all of their captions in sight, by their visit. */
  private readonly takenOff = new Map<string, string>();
  private readonly format = shopFormatAt(() => '2026-03-03T08:00:00Z');

  constructor(seed: number, hours: number) {
    this.dice = new Dice(seed);
    const server = new Server();
    server.files.set('holiday.jpg.json', '[1, 2');
    let seconds = 0;
    const clock = (ahead: number) => () => {
      seconds += 7;
      return Date.UTC(2026, 2, 3, 12) + 1000 * (seconds + 3600 * ahead);
    };
    this.places = ['tablet-a', 'tablet-number-b'].map((name, index) => ({
      tablet: new Tablet(name, clock(index * hours)),
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
      for (const [picture, id] of this.takenOff) {
        const isBack = tablet.visits.get(id)?.photographs?.some((one) => one.id === picture);
        if (isBack && !this.wasRestored(id)) problems.push(`${tablet.name} has ${picture} again`);
      }
      for (const id of this.gone) if (tablet.visits.has(id)) problems.push(`${tablet.name} has ${id} again`);
    }
    return problems;
  }

  /** A photograph may come back with its visit. */
  private wasRestored(id: string): boolean {
    return this.restored.has(id) || this.keptTwice.has(id) || this.outvoted.has(id);
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
    const picture = this.dice.of(pictures);
    if (picture !== undefined && this.dice.falls(0.1)) this.takeOff(tablet, id, picture);
    else if (picture !== undefined && this.dice.falls(0.2)) this.caption(tablet, id, picture);
    else if (pictures.length < 20 && this.dice.falls(0.15)) tablet.attach(id, this.word(id));
    else tablet.write(id, this.word(id));
  }

  /** With its caption, the words of which may be of the other tablet. */
  private takeOff(tablet: Tablet, id: string, picture: Picture): void {
    for (const word of [picture.id, ...picture.caption.split(' ')]) this.deleted.add(word);
    const words = picture.caption.split(' ');
    const allSeen = (this.captions.get(picture.id) ?? []).every((word) => words.includes(word));
    if (allSeen) this.takenOff.set(picture.id, id);
    tablet.detach(id, picture.id);
    this.gone.delete(id);
    this.thinned.add(id);
    this.changes += 1;
  }

  private caption(tablet: Tablet, id: string, picture: Picture): void {
    const word = this.word(id);
    this.captions.set(picture.id, [...(this.captions.get(picture.id) ?? []), word]);
    this.takenOff.delete(picture.id);
    tablet.caption(id, picture.id, word);
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
    if (restoredHereOnly && !this.thinned.has(visit.id) && all.every((word) => words.includes(word)))
      this.gone.add(visit.id);
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
    for (const one of apart) this.keptTwice.add(one.id);
    for (const id of keptAfterDeletion) this.outvoted.add(id);
    this.kept += keptAfterDeletion.length;
  }
}
