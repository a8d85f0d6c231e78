import type { AxisRecord } from '../../../../src/axes/record/axis-schema.ts';
import { mergeAxes } from '../../../../src/axes/record/merge-axes.ts';
import {
  type Content,
  type Picture,
  picturesChanged,
  picturesOf,
  withPictures,
} from '../../../../src/shop/merge/content.ts';
import type { DeviceState } from '../../../../src/shop/merge/exchange.ts';
import { type Known, printOf } from '../../../../src/shop/merge/merge-visit.ts';
import type { Device } from '../../../../src/shop/merge/sync.ts';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import { readVisit } from '../../../../src/visit/record/read-visit.ts';
import { photograph } from '../../../support/photographs.ts';

/** Each look at it is seven seconds later. */
function runningClock(): () => number {
  let clock = Date.UTC(2026, 2, 3, 6);
  return () => {
    clock += 7000;
    return clock;
  };
}

/** A device whose storage is a map; every change gives a visit a new revision, as the site's storage does. */
export class Tablet implements Device {
  visits = new Map<string, Content>();
  known = new Map<string, Known>();
  unreadable = new Set<string>();
  register = new Map<string, AxisRecord>();
  /** Called before each change by an exchange: what a person does meanwhile. */
  meanwhile: () => void = () => undefined;
  readonly name: string;
  private readonly time: () => number;

  /** `time`: what its clock shows, in ms since 1970. */
  constructor(name: string, time: () => number = runningClock()) {
    this.name = name;
    this.time = time;
  }

  now(): string {
    return new Date(this.time()).toISOString();
  }

  begin(id: string, notes: string): void {
    this.put({ ...newVisit(id, this.now(), { machine: 'Marrow Bay line 2 (invented)' }), notes });
  }

  write(id: string, words: string): void {
    const visit = this.visits.get(id);
    if (visit) this.put({ ...visit, notes: `${visit.notes} ${words}`, changedAt: this.now() });
  }

  /** The picture's id is the word; its revision stays, as in the site's storage. */
  attach(id: string, word: string): void {
    const visit = this.visits.get(id);
    if (visit) this.visits.set(id, withPictures(visit, [...picturesOf(visit), photograph(word, { id: word })]));
  }

  detach(id: string, word: string): void {
    const visit = this.visits.get(id);
    if (visit)
      this.visits.set(
        id,
        withPictures(
          visit,
          picturesOf(visit).filter((one) => one.id !== word),
        ),
      );
  }

  /** Adds a word to a caption. */
  caption(id: string, picture: string, word: string): void {
    const visit = this.visits.get(id);
    if (visit === undefined) return;
    const changedAt = this.now();
    const pictures = picturesOf(visit).map((one) =>
      one.id === picture ? { ...one, caption: `${one.caption} ${word}`.trim(), changedAt } : one,
    );
    this.visits.set(id, { ...visit, photographs: pictures });
  }

  put(visit: Content): void {
    const { photographs: _pictures, ...record } = visit;
    const fits = readVisit(JSON.parse(JSON.stringify(record)));
    if (!fits.ok) throw new Error(`${fits.problem.message} ${fits.problem.where ?? ''}`);
    this.visits.set(visit.id, { ...visit, revision: visit.revision + 1 });
  }

  async read(): Promise<DeviceState> {
    return {
      device: this.name,
      // Without the pictures themselves, as the site reads its storage.
      visits: new Map(
        [...this.visits].map(([id, visit]) => [id, withPictures(visit, picturesOf(visit).map(headOnly))]),
      ),
      unreadable: new Set(this.unreadable),
      known: new Map(this.known),
    };
  }

  async store(visit: Content, before: Content | undefined): Promise<boolean> {
    this.meanwhile();
    if (this.visits.get(visit.id)?.revision !== before?.revision) return false;
    if (before !== undefined && picturesChanged(picturesOf(before), picturesOf(this.visits.get(visit.id) ?? visit)))
      return false;
    const seen = new Set((before ? picturesOf(before) : []).map(({ id }) => id));
    const here = [visit.id, visit.secondVersionOf].flatMap((id) => {
      const stored = id === undefined ? undefined : this.visits.get(id);
      return stored ? picturesOf(stored) : [];
    });
    const whole = picturesOf(visit).map((one) => (one.jpeg ? one : here.find(({ id }) => id === one.id)));
    if (whole.some((one) => one?.jpeg === undefined)) return false;
    // One that was attached meanwhile stays.
    const own = this.visits.get(visit.id);
    const meanwhile = own ? picturesOf(own).filter(({ id }) => !seen.has(id)) : [];
    this.put({
      ...withPictures(visit, [...whole.flatMap((one) => one ?? []), ...meanwhile]),
      revision: before?.revision ?? 0,
    });
    return true;
  }

  async remove(before: Content): Promise<boolean> {
    this.meanwhile();
    if (this.visits.get(before.id)?.revision !== before.revision) return false;
    const own = this.visits.get(before.id);
    if (own && picturesChanged(picturesOf(own), picturesOf(before))) return false;
    return this.visits.delete(before.id);
  }

  async pictures(id: string) {
    const visit = this.visits.get(id);
    return visit ? picturesOf(visit) : [];
  }

  async axes() {
    return [...this.register.values()];
  }

  async uniteAxes(axes: readonly AxisRecord[]): Promise<void> {
    for (const axis of axes) {
      const here = this.register.get(axis.id);
      this.register.set(axis.id, { ...mergeAxes(here ?? axis, axis), revision: (here?.revision ?? 0) + 1 });
    }
  }

  async remember(known: ReadonlyMap<string, Known>): Promise<void> {
    for (const [id, one] of known) this.known.set(id, one);
  }

  /** Id and content of every visit. */
  prints(): string[] {
    return [...this.visits.values()].map((visit) => `${visit.id} ${printOf(visit)}`).sort();
  }

  notes(): string[] {
    return [...this.visits.values()].map(({ notes }) => notes);
  }

  /** Every word and every photograph of every visit. */
  words(): Set<string> {
    return new Set([...this.visits.values()].flatMap(wordsOf));
  }
}

export const wordsOf = (visit: Content): string[] => [
  ...visit.notes.split(' '),
  ...picturesOf(visit).flatMap(({ id, caption }) => [id, ...caption.split(/ (?:\/ )?/)]),
];

const headOnly = ({ jpeg: _picture, ...head }: Picture): Picture => head;
