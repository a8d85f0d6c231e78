import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import type { DayMarks } from './question-marks.ts';

/**
 * Whole days only, no chance, and twice a year at the least: safety knowledge fades, and the fieldbook changes. The
 * weights are those of the package, fitted to other people's reviews.
 */
const scheduler = fsrs({ enable_short_term: false, enable_fuzz: false, maximum_interval: 180 });

/**
 * The day on which a question comes again (`2026-12-02`), from its marks; undefined if it was never missed. What was
 * known before the first miss does not count.
 */
export function reviewDay(marks: DayMarks): string | undefined {
  const days = Object.keys(marks).sort();
  const first = days.findIndex((day) => marks[day] === 'missed');
  if (first < 0) return undefined;
  let card = createEmptyCard(noon(days[first] as string));
  for (const day of days.slice(first)) {
    card = scheduler.next(card, noon(day), marks[day] === 'missed' ? Rating.Again : Rating.Good).card;
  }
  return card.due.toISOString().slice(0, 10);
}

/** The same on every device, wherever it is. */
const noon = (day: string) => new Date(`${day}T12:00:00Z`);
