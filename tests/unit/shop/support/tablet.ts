import type { DeviceState } from '../../../../src/shop/merge/exchange.ts';
import { type Known, printOf } from '../../../../src/shop/merge/merge-visit.ts';
import type { Device } from '../../../../src/shop/merge/sync.ts';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import { readVisit } from '../../../../src/visit/record/read-visit.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';

/** A device whose storage is a map; every change gives a visit a new revision, as the site's storage does. */
export class Tablet implements Device {
  visits = new Map<string, VisitRecord>();
  known = new Map<string, Known>();
  unreadable = new Set<string>();
  /** Called before each change by an exchange: what a person does meanwhile. */
  meanwhile: () => void = () => undefined;
  readonly name: string;
  private clock = 0;

  constructor(name: string) {
    this.name = name;
  }

  /** Seconds as an ISO time; the clocks of two tablets differ. */
  now(): string {
    this.clock += 7;
    return new Date(Date.UTC(2026, 2, 3, 6) + 1000 * (this.clock + this.name.length * 600)).toISOString();
  }

  begin(id: string, notes: string): void {
    this.put({ ...newVisit(id, this.now(), { machine: 'Marrow Bay line 2 (invented)' }), notes });
  }

  write(id: string, words: string): void {
    const visit = this.visits.get(id);
    if (visit) this.put({ ...visit, notes: `${visit.notes} ${words}`, changedAt: this.now() });
  }

  put(visit: VisitRecord): void {
    const fits = readVisit(JSON.parse(JSON.stringify(visit)));
    if (!fits.ok) throw new Error(`${fits.problem.message} ${fits.problem.where ?? ''}`);
    this.visits.set(visit.id, { ...visit, revision: visit.revision + 1 });
  }

  async read(): Promise<DeviceState> {
    return {
      device: this.name,
      visits: new Map(this.visits),
      unreadable: new Set(this.unreadable),
      known: new Map(this.known),
    };
  }

  async store(visit: VisitRecord, before: VisitRecord | undefined): Promise<boolean> {
    this.meanwhile();
    if (this.visits.get(visit.id)?.revision !== before?.revision) return false;
    this.put({ ...visit, revision: before?.revision ?? 0 });
    return true;
  }

  async remove(before: VisitRecord): Promise<boolean> {
    this.meanwhile();
    if (this.visits.get(before.id)?.revision !== before.revision) return false;
    return this.visits.delete(before.id);
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
}
