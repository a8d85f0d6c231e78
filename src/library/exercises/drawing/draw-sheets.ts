import { crc32 } from '../../../kernel/link/crc32.ts';
import { type Random, seeded } from '../../../kernel/random.ts';
import type { ExerciseNumber, FigureDraw, Question } from '../exercise-schema.ts';
import { givenValue } from '../exercise-value.ts';
import { namedIn, valuesOf } from '../fill.ts';
import { drawFigure } from './draw-figure.ts';
import { keepsMeaning } from './same-meaning.ts';

/** Tries for one sheet. A question that needs more has draws that are too narrow or don't fit its answer. */
const mostTries = 400;

/** Whether sheets may have different figures in this question. */
export function canBeDrawn({ numbers = {} }: Question): boolean {
  return Object.values(numbers).some(isDrawn);
}

/**
 * The same question for each of `count` sheets, no two of them with the same figures. `seed` is any whole number; the
 * first sheets are the same whatever the count. A question without draws is the same on every sheet. Throws if there are
 * not enough different figures whose answer is that of the question.
 */
export function drawSheets(question: Question, seed: number, count: number): Question[] {
  if (!canBeDrawn(question)) return Array.from({ length: count }, () => question);
  const random = seeded(crc32(new TextEncoder().encode(`${seed} ${question.id}`)));
  const taken = new Set<string>();
  return Array.from({ length: count }, () => {
    for (let tries = 0; tries < mostTries; tries++) {
      const drawn = drawOnce(question, random);
      const figures = givenIn(drawn);
      if (taken.has(figures) || !keepsMeaning(question, drawn)) continue;
      taken.add(figures);
      return drawn;
    }
    throw new Error(`question ${question.id}: no other figures found for sheet ${taken.size + 1}`);
  });
}

/** The question with drawn figures in place of the printed ones, which may not fit its answer. */
function drawOnce(question: Question, random: Random): Question {
  const numbers: Record<string, ExerciseNumber> = {};
  for (const [name, number] of Object.entries(question.numbers ?? {})) {
    if (!isDrawn(number)) numbers[name] = number;
    else {
      const named = namedIn(valuesOf(question.id, numbers), `question ${question.id}: the draw of “${name}”`);
      numbers[name] = { given: drawFigure(number.draw, named, random) };
    }
  }
  return { ...question, numbers };
}

function isDrawn(number: ExerciseNumber): number is { given: string; draw: FigureDraw } {
  return 'given' in number && number.draw !== undefined;
}

/** What the question prints of its drawn figures, as one text. */
function givenIn({ question, numbers = {} }: Question): string {
  const printed = Object.entries(numbers).filter(([name]) => question.includes(`{${name}}`));
  return printed.map(([, number]) => ('given' in number ? givenValue(number.given).text : '')).join('|');
}
