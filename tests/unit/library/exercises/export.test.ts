import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Question } from '../../../../src/library/exercises/exercise-schema.ts';
import { exportedQuestion } from '../../../../src/library/exercises/export/exported-question.ts';
import { qtiItem } from '../../../../src/library/exercises/export/qti-item.ts';
import { qtiFiles, qtiPackage } from '../../../../src/library/exercises/export/qti-package.ts';
import { questionsCsv } from '../../../../src/library/exercises/export/questions-csv.ts';
import { xmlDocument } from '../../../../src/library/exercises/export/xml.ts';
import { misfits } from './qti/content-model.ts';
import { type ReadElement, readXml } from './qti/read-xml.ts';

const joined: Question = {
  id: 'joined',
  question: 'At Marrow Bay Glassworks the cable reads {cable} & the motor {motor}. What do they read together?',
  answer: ['About {together}: their conductances add.'],
  numbers: {
    cable: { given: '2 GΩ' },
    motor: { given: '600 MΩ' },
    together: { compute: 'parallel', with: ['cable', 'motor'] },
  },
  asks: 'together',
};
const verdict: Question = {
  id: 'verdict',
  question: 'The bus reads {bus}. "What" is the verdict?',
  answer: ['It is {verdict}, since < is not ≤.'],
  numbers: { bus: { given: '7 V' }, verdict: { compute: 'dischargeVerdict', with: ['bus'] } },
  asks: 'verdict',
};
const open: Question = {
  id: 'open',
  question: 'Why is the motor lead taken off first?',
  answer: ['First.', 'Second.'],
};
const questions = [joined, verdict, open].map((question) =>
  exportedQuestion('measuring/example', 'An example', question),
);
const sheet = { number: 1, questions };

describe('IMS QTI 3.0', () => {
  test('a question for a figure is the item that was written by hand', () => {
    const byHand = readFileSync(new URL('./qti/figure-item.xml', import.meta.url), 'utf8');
    expect(readXml(xmlDocument(qtiItem(questions[0] as (typeof questions)[0])))).toEqual(readXml(byHand));
  });

  test('every file is well-formed and fits the standard', () => {
    const files = Object.entries(qtiFiles('example', 'An example', [sheet]));
    expect(files.length).toBe(5);
    expect(files.flatMap(([name, text]) => misfits(readXml(text)).map((problem) => `${name}: ${problem}`))).toEqual([]);
  });

  test('the check finds what does not fit', () => {
    const text = xmlDocument(qtiItem(questions[1] as (typeof questions)[0]));
    const problems = (changed: string) => misfits(readXml(changed));
    expect(problems(text)).toEqual([]);
    expect(problems(text.replace(' view="scorer"', ''))).toEqual(['qti-rubric-block lacks view']);
    expect(problems(text.replace('time-dependent', 'timeDependent'))).not.toEqual([]);
    expect(problems(text.replaceAll('qti-choice-interaction', 'choiceInteraction'))).not.toEqual([]);
    expect(() => problems(text.replace('</qti-item-body>', ''))).toThrow();
    expect(() => problems(text.replace('What', '<What'))).toThrow();
  });

  test('a verdict is chosen, its answer is the computed one, and marks in a text are kept', () => {
    const item = readXml(xmlDocument(qtiItem(questions[1] as (typeof questions)[0])));
    const [response] = item.children as ReadElement[];
    expect(response).toMatchObject({ name: 'qti-response-declaration', attributes: { 'base-type': 'identifier' } });
    expect(JSON.stringify(response)).toContain('"undecided"');
    expect(JSON.stringify(item)).toContain('since < is not ≤');
  });

  test('a reason alone is scored by a person', () => {
    const text = xmlDocument(qtiItem(questions[2] as (typeof questions)[0]));
    expect(text).toContain('external-scored="human"');
    expect(text).not.toContain('qti-response-processing');
  });

  test('the package holds what its manifest names, and every reference leads to a file', () => {
    const files = unzipSync(qtiPackage('example', 'An example', [sheet, { ...sheet, number: 2 }]));
    const manifest = strFromU8(files['imsmanifest.xml'] as Uint8Array);
    const named = [...manifest.matchAll(/<file href="([^"]+)"/g)].map(([, name]) => name);
    expect([...named, 'imsmanifest.xml'].sort()).toEqual(Object.keys(files).sort());
    const ids = [...manifest.matchAll(/resource identifier="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of manifest.matchAll(/identifierref="([^"]+)"/g)) expect(ids).toContain(id);
    for (const [, item] of strFromU8(files['sheet_2.xml'] as Uint8Array).matchAll(/href="([^"]+)"/g))
      expect(files).toHaveProperty([item as string]);
  });

  test('the same questions make the same file', () => {
    expect(qtiPackage('example', 'An example', [sheet])).toEqual(qtiPackage('example', 'An example', [sheet]));
  });
});

test('CSV has a row for each question, with paragraphs, commas and quotation marks', () => {
  const rows = csvParse(questionsCsv([sheet]).slice(1));
  expect(rows.map(({ kind, result, unit }) => [kind, result, unit])).toEqual([
    ['figure', '462', 'MΩ'],
    ['choice', 'undecided', ''],
    ['open', '', ''],
  ]);
  expect(rows[1]?.question).toBe('The bus reads 7 V. "What" is the verdict?');
  expect(rows[2]?.answer).toBe('First.\nSecond.');
});

test('asking for what is no figure is an error', () => {
  const wrong = { ...open, asks: 'nothing' };
  expect(() => exportedQuestion('measuring/example', 'An example', wrong)).toThrow('asks for “nothing”');
});
