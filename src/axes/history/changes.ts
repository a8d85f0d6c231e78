import { daysPerYear } from '../../calculators/trend/rule/line-fit.ts';
import { limitValue } from '../../kernel/limits.ts';
import { parseDate } from '../../kernel/reading/calendar-date.ts';
import type { PartChange } from '../record/axis-schema.ts';
import type { Axis } from './register.ts';

/** A part that was changed, or that a visit decided to replace; nobody may have noted that it was done. */
export interface Exchange {
  part: string;
  /** `2026-03-02`. */
  on: string;
  kind: 'noted' | 'decided';
  note: string;
  /** That decided it. */
  visit?: string;
  /** Of the note; absent for a decision. */
  id?: string;
}

/**
 * Every exchange of a part, the newest first. A note and the decision that it carries out are one: by the visit that the
 * note names, else the last decision on that part before it.
 */
export function exchangesOf(axis: Axis): Exchange[] {
  const notes = [axis, ...axis.merged].flatMap(({ record }) => record?.changes ?? []).filter(({ dropped }) => !dropped);
  const decisions = axis.visits.flatMap(({ id, at, decision }) =>
    (decision?.replace ?? []).map(
      (part): Exchange => ({ part, on: at.slice(0, 10), kind: 'decided', note: '', visit: id }),
    ),
  );
  const carriedOut = new Set<Exchange>();
  const noted = notes.map((note): Exchange => {
    const open = decisions.filter((one) => one.part === note.part && !carriedOut.has(one));
    const own = open.find(({ visit }) => visit === note.visit) ?? lastBefore(open, note);
    if (own !== undefined) carriedOut.add(own);
    const visit = note.visit ?? own?.visit;
    return { id: note.id, part: note.part, on: note.on, kind: 'noted', note: note.note, ...(visit && { visit }) };
  });
  return [...noted, ...decisions.filter((one) => !carriedOut.has(one))].sort((a, b) => (a.on < b.on ? 1 : -1));
}

function lastBefore(decisions: readonly Exchange[], { visit, on }: PartChange): Exchange | undefined {
  if (visit !== undefined) return undefined;
  return [...decisions].sort((a, b) => (a.on < b.on ? 1 : -1)).find((one) => one.on <= on);
}

/** The first two drives within the time `drives-within` of each other, the later one first; undefined if there are none. */
export function secondDrive(exchanges: readonly Exchange[]): { later: Exchange; earlier: Exchange } | undefined {
  const drives = exchanges.filter(({ part }) => part === 'drive');
  for (const [index, later] of drives.entries()) {
    const earlier = drives[index + 1];
    if (
      earlier !== undefined &&
      daysBetween(earlier.on, later.on) <= Math.ceil(limitValue('drives-within') * daysPerYear)
    ) {
      return { later, earlier };
    }
  }
  return undefined;
}

function daysBetween(from: string, to: string): number {
  const [first, second] = [parseDate(from), parseDate(to)];
  return first.ok && second.ok ? second.day - first.day : Number.POSITIVE_INFINITY;
}

/**
 * Since when a part of an insulation reading is the same: the day of the last noted exchange, `''` for ever, and the visits
 * that decided it.
 */
export function sameSince(
  exchanges: readonly Exchange[],
  part: 'joined' | 'motor' | 'cable',
): { on: string; decidedBy: string[] } {
  const parts = part === 'joined' ? ['motor', 'motor-cable'] : [part === 'cable' ? 'motor-cable' : 'motor'];
  const noted = exchanges.filter((one) => one.kind === 'noted' && parts.includes(one.part));
  const on = noted[0]?.on ?? '';
  return { on, decidedBy: noted.flatMap((one) => (one.on === on && one.visit !== undefined ? [one.visit] : [])) };
}
