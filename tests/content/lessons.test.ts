import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exerciseSetSchema } from '../../src/library/exercises/exercise-schema.ts';
import { finalFaults } from '../../src/library/lessons/final-cases.ts';
import { type Lesson, lessonSchema } from '../../src/library/lessons/lesson-schema.ts';
import { caseFaults, windingTemperatures } from '../../src/practice/case/case-code.ts';
import { drawMachine } from '../../src/practice/case/draw-machine.ts';
import { Robot } from '../../src/practice/robot/robot.ts';
import { filesOf, jsonOf } from './support/files.ts';
import { typedNumbers } from './support/typed-numbers.ts';

const lessons = jsonOf('content/lessons/*.json').map(({ path, data }): { path: string; data: Lesson } => ({
  path,
  data: lessonSchema.parse(data),
}));
const figures = readdirSync(new URL('../../src/practice/figures', import.meta.url), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

test('twelve lessons in one row, each with an article of its own and a fault of its own', () => {
  const of = (pick: (lesson: Lesson) => unknown) => lessons.map(({ data }) => pick(data));
  expect(of(({ order }) => order).sort((a, b) => Number(a) - Number(b))).toEqual(
    Array.from({ length: 12 }, (_, i) => i + 1),
  );
  expect(new Set(of(({ article }) => article)).size).toBe(12);
  expect(new Set(of((lesson) => lesson.case.fault)).size).toBe(12);
});

test('each figure is tried in one lesson', () => {
  const tried = lessons.flatMap(({ data }) => (data.figure === undefined ? [] : [data.figure.name]));
  expect(tried.sort()).toEqual(figures.sort());
});

/** A visit along the guide proves every bad part and no other. */
function expectSolvable(fault: string, seed: number, temperatureStep: number): void {
  expect(caseFaults).toContain(fault);
  const machine = drawMachine(fault, seed, windingTemperatures[temperatureStep] ?? Number.NaN);
  const { decision } = new Robot(machine).visit();
  expect(decision.replace.map(({ part }) => part).sort()).toEqual([...machine.axis.bad].sort());
}

describe.each(finalFaults)('$title', ({ faults }) => {
  test('six faults; none is that of a lesson but those on which nothing is to be replaced', () => {
    expect(new Set(faults.map(([fault]) => fault)).size).toBe(6);
    const taught = lessons.map(({ data }) => data.case.fault);
    expect(faults.filter(([fault]) => taught.includes(fault)).map(([fault]) => fault)).toHaveLength(1);
  });

  test.each(faults)('%s can be solved along the guide', expectSolvable);
});

describe.each(lessons)('$path', ({ data }) => {
  test('its article and its questions exist', () => {
    expect(filesOf(`content/articles/${data.article}.mdx`)).toHaveLength(1);
    const [set] = jsonOf(`content/exercises/${data.article}.json`);
    const known = exerciseSetSchema.parse(set?.data).questions.map(({ id }) => id);
    expect(data.questions.filter((id) => !known.includes(id))).toEqual([]);
  });

  test('its case can be solved along the guide', () => {
    const { fault, seed, temperatureStep } = data.case;
    expectSolvable(fault, seed, temperatureStep);
  });

  test('types no figure with a unit', () => {
    expect([data.title, data.aim, data.figure?.task ?? '', data.case.task].flatMap(typedNumbers)).toEqual([]);
  });
});
