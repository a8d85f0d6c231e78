import { describe, expect, test } from 'vitest';
import { markedQuestion, type QuestionMarks, unitedQuestions } from '../../../../src/library/lessons/question-marks.ts';
import { reviewDay } from '../../../../src/library/lessons/review-day.ts';

const question = 'measuring/bridge-check#climbing-row';

describe('marks of a question', () => {
  test('a day has one mark: the later one corrects it, and it can be taken off', () => {
    const missed = markedQuestion({}, question, '2026-11-28', 'missed');
    expect(markedQuestion(missed, question, '2026-11-28', 'known')).toEqual({ [question]: { '2026-11-28': 'known' } });
    expect(markedQuestion(missed, question, '2026-11-28', undefined)).toEqual({ [question]: {} });
  });

  test('two devices unite in either order, and a miss on one of them stays a miss', () => {
    const one: QuestionMarks = { [question]: { '2026-11-28': 'missed', '2026-11-30': 'known' } };
    const other: QuestionMarks = { [question]: { '2026-11-28': 'known', '2026-12-01': 'missed' } };
    const both = { [question]: { '2026-11-28': 'missed', '2026-11-30': 'known', '2026-12-01': 'missed' } };
    expect(unitedQuestions(one, other)).toEqual(both);
    expect(unitedQuestions(other, one)).toEqual(both);
  });
});

// The scheduler is a package of the npm registry with tests of its own; this holds what the page promises.
describe('the day on which a question comes again', () => {
  test('a question that was never missed does not come', () => {
    expect(reviewDay({})).toBeUndefined();
    expect(reviewDay({ '2026-11-28': 'known' })).toBeUndefined();
  });

  test('a missed question comes on the next day, whatever was known before', () => {
    expect(reviewDay({ '2026-11-28': 'missed' })).toBe('2026-11-29');
    expect(reviewDay({ '2026-11-20': 'known', '2026-11-28': 'missed' })).toBe('2026-11-29');
  });

  test('known on its day, it waits longer each time, and about half a year at most; missed again, it comes soon', () => {
    let marks: Record<string, 'missed' | 'known'> = { '2026-11-28': 'missed' };
    let day = reviewDay(marks) as string;
    let before = 0;
    for (let time = 0; time < 12; time++) {
      marks = { ...marks, [day]: 'known' };
      const next = reviewDay(marks) as string;
      const wait = (Date.parse(next) - Date.parse(day)) / 86_400_000;
      expect(wait).toBeGreaterThanOrEqual(Math.min(before + 1, 180));
      // The scheduler adds a day, so that a known question waits longer than a hardly known one.
      expect(wait).toBeLessThanOrEqual(181);
      [day, before] = [next, wait];
    }
    expect(before).toBeGreaterThanOrEqual(180);
    const missed = reviewDay({ ...marks, [day]: 'missed' }) as string;
    expect(Date.parse(missed) - Date.parse(day)).toBeLessThan((before / 10) * 86_400_000);
  });

  test('the order in which a file lists the days does not matter', () => {
    expect(reviewDay({ '2026-12-02': 'known', '2026-11-28': 'missed' })).toBe(
      reviewDay({ '2026-11-28': 'missed', '2026-12-02': 'known' }),
    );
  });
});
