import { describe, expect, test } from 'vitest';
import { exerciseSetSchema } from '../../src/library/exercises/exercise-schema.ts';
import { exportedQuestion } from '../../src/library/exercises/export/exported-question.ts';
import { qtiItem } from '../../src/library/exercises/export/qti-item.ts';
import { xmlDocument } from '../../src/library/exercises/export/xml.ts';
import { fillQuestion, plainText } from '../../src/library/exercises/fill.ts';
import { misfits } from '../unit/library/exercises/qti/content-model.ts';
import { readXml } from '../unit/library/exercises/qti/read-xml.ts';
import { filesOf, jsonOf } from './support/files.ts';
import { typedNumbers } from './support/typed-numbers.ts';

const sets = jsonOf('content/exercises/**/*.json');
const articleIds = filesOf('content/articles/**/*.mdx').map(({ path }) =>
  path.replace(/^content\/articles\/|\.mdx$/g, ''),
);

test('each article has questions, sixty in all', () => {
  const withQuestions = sets.map(({ path }) => path.replace(/^content\/exercises\/|\.json$/g, ''));
  expect(articleIds.filter((id) => !withQuestions.includes(id))).toEqual([]);
  const count = sets.reduce((sum, { data }) => sum + exerciseSetSchema.parse(data).questions.length, 0);
  expect(count).toBeGreaterThanOrEqual(60);
});

describe.each(sets)('$path', ({ path, data }) => {
  const { questions } = exerciseSetSchema.parse(data);

  test('belongs to an article', () => {
    expect(articleIds).toContain(path.replace(/^content\/exercises\/|\.json$/g, ''));
  });

  test('names each question once', () => {
    const ids = questions.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  test.each(questions)('$id: its numbers are found or computed, and all are used', (question) => {
    const filled = fillQuestion(question);
    const text = [filled.question, ...filled.answer].map(plainText).join('\n');
    expect(text).not.toMatch(/[{}]|NaN|undefined/);
    const written = JSON.stringify([question.question, question.answer]);
    const inputs = Object.values(question.numbers ?? {}).flatMap((number) => ('compute' in number ? number.with : []));
    const names = Object.keys(question.numbers ?? {});
    expect(names.filter((name) => !written.includes(`{${name}}`) && !inputs.includes(name))).toEqual([]);
  });

  test.each(questions)('$id: leaves as an item of QTI, with all that it says', (question) => {
    const exported = exportedQuestion('measuring/example', 'An example', question);
    const item = readXml(xmlDocument(qtiItem(exported)));
    expect(misfits(item)).toEqual([]);
    const said = JSON.stringify(item);
    const missing = [exported.question, ...exported.answer].filter((text) => !said.includes(JSON.stringify(text)));
    expect(missing).toEqual([]);
    // What a machine scores is said in the answer that a person reads.
    const { key } = exported;
    if (key !== undefined) {
      const result = key.kind === 'choice' ? key.value : `${key.value} ${key.unit}`;
      expect(exported.answer.join(' ')).toContain(result);
    }
  });

  test.each(questions)('$id: types no figure with a unit', ({ question, answer }) => {
    expect([question, ...answer].flatMap(typedNumbers)).toEqual([]);
  });
});

test('a mistake is named: a missing number, an unknown function, an impossible result', () => {
  const about = { id: 'x', question: 'What does {a} come to at last?', answer: ['Work it out.'] };
  const given = { given: '3 MΩ' };
  expect(() => fillQuestion(about)).toThrow('no number “a”');
  expect(() => fillQuestion({ ...about, numbers: { a: { compute: 'guess', with: [] } } })).toThrow(
    'no function “guess”',
  );
  expect(() => fillQuestion({ ...about, numbers: { a: { compute: 'parallel', with: ['b'] }, b: given } })).toThrow(
    '“b”',
  );
  const outside = { a: { compute: 'factorHalving', with: ['b', 'b'] }, b: given };
  expect(() => fillQuestion({ ...about, numbers: { b: given, a: outside.a } })).toThrow('is NaN');
  expect(() => fillQuestion({ ...about, numbers: { a: { given: '3' } } })).toThrow('“3”');
});
