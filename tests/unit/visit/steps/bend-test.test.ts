import { describe, expect, test } from 'vitest';
import { evaluateForm } from '../../../../src/visit/evaluate-form.ts';
import { bendTestRule } from '../../../../src/visit/steps/bend-test/rule.ts';
import type { Form } from '../../../../src/visit/steps/fields.ts';

// No source: how the step hands what the calculator found to the guide, and what older records said.

const quiet = (loop: string, which = ''): Form => ({
  ...{ [`${loop}Rest${which}`]: '0.42 Ω', [`${loop}Low${which}`]: '0.41 Ω' },
  ...{ [`${loop}High${which}`]: '0.45 Ω', [`${loop}After${which}`]: '0.42 Ω' },
});
const position = (place: number): Form => ({
  [`P${place}U`]: '>2 GΩ',
  [`P${place}V`]: '>2 GΩ',
  [`P${place}W`]: '>2 GΩ',
});
const sound: Form = {
  ...{ end: 'off', meter: 'hold', moved: 'twice', screen: 'none', idle: 'none', whileOn: 'at-rest' },
  ...{ ...quiet('UV'), ...quiet('VW'), ...quiet('WU'), ...quiet('PE'), ...quiet('feedback') },
  ...{ testVoltage: '500 V', ...position(1), ...position(2), ...position(3) },
};
const opensOnce: Form = { ...sound, UVHigh: 'OL', WUHigh: 'OL' };
const again: Form = { ...quiet('UV', '2'), ...quiet('VW', '2'), ...quiet('WU', '2'), UVHigh2: 'OL', WUHigh2: 'OL' };

const answer = (form: Form) => evaluateForm('bend-test', form).answer;

describe('what the guide hears of the readings', () => {
  const rows: [string, Form, object][] = [
    ['quiet', sound, { result: 'steady', again: true }],
    ['core U once', opensOnce, { result: 'opens', core: 'power', again: false }],
    ['core U twice', { ...opensOnce, ...again, movedAgain: 'cable' }, { result: 'opens', core: 'power', again: true }],
    ['PE once', { ...sound, PEHigh: '80 Ω' }, { result: 'opens', core: 'PE', again: false }],
    ['the feedback once', { ...sound, feedbackHigh: 'OL' }, { result: 'opens', core: 'feedback', again: false }],
    [
      'the feedback twice',
      { ...sound, feedbackHigh: 'OL', ...quiet('feedback', '2'), feedbackHigh2: 'OL', movedAgain: 'cable' },
      { result: 'opens', core: 'feedback', again: true },
    ],
    [
      'only the plugged connector',
      { ...sound, ...quiet('UV', '2'), UVHigh2: 'OL', movedAgain: 'mated' },
      { result: 'opens', core: 'power', again: false },
    ],
    ['a leak once', { ...sound, P2V: '0.4 MΩ' }, { result: 'leaks', core: 'power', again: false }],
    ['a leak twice', { ...sound, P2V: '0.4 MΩ', badAgainV: '0.5 MΩ' }, { result: 'leaks', core: 'power', again: true }],
    ['tips moved', { ...sound, UVAfter: '9 Ω' }, { result: 'undecided', again: false }],
    ['open at rest', { ...sound, PERest: 'OL', PELow: 'OL', PEHigh: 'OL', PEAfter: 'OL' }, { result: 'undecided' }],
    ['low everywhere', { ...sound, P1U: '0.4 MΩ', P2U: '0.4 MΩ', P3U: '0.4 MΩ' }, { result: 'undecided' }],
    ['under voltage', { ...sound, whileOn: 'moved' }, { result: 'undecided', again: false }],
  ];
  test.each(rows)('%s', (_, form, expected) => {
    expect(answer(form)).toMatchObject(expected);
  });

  test('undecided stops the visit until it is left open', () => {
    const undecided = answer({ ...sound, UVAfter: '9 Ω' });
    const left = answer({ ...sound, UVAfter: '9 Ω', leftOpen: 'yes' });
    expect(undecided && bendTestRule.problem(undecided, {})).toBe('undecided');
    expect(left && bendTestRule.problem(left, {})).toBeUndefined();
  });

  test('it is kept with its verdict, and without parts that a record does not know', () => {
    const { snapshot, line } = evaluateForm('bend-test', sound);
    expect(snapshot?.verdict).toBe('go');
    expect(snapshot?.parts).toBeUndefined();
    expect(snapshot?.sentences.join(' ')).toContain('never says that the cable is sound');
    expect(line).not.toBe('');
  });

  test('an entry that cannot be read is no answer', () => {
    expect(answer({ ...sound, UVHigh: 'about half' })).toBeUndefined();
  });
});

describe('a record without readings', () => {
  test.each([
    [{ result: 'steady', again: 'yes' }, { result: 'steady', again: true }, 'Every core stayed steady, seen twice'],
    [
      { result: 'opens', core: 'screen', again: 'yes' },
      { result: 'opens', core: 'screen', again: true },
      'A core opened, or its resistance jumped, The screen, seen twice',
    ],
    [
      { result: 'leaks', core: 'power' },
      { result: 'leaks', core: 'power', again: false },
      'A core leaked in one position, U, V or W',
    ],
    [{ result: 'not-done' }, { result: 'not-done', again: false }, 'Not done'],
  ] as [Form, object, string][])('%j says what it said', (form, expected, line) => {
    expect(answer(form)).toEqual(expected);
    expect(evaluateForm('bend-test', form)).toMatchObject({ line, snapshot: undefined });
  });

  test('a fault without its core is no answer, and neither is nothing', () => {
    expect(answer({ result: 'opens' })).toBeUndefined();
    expect(answer({})).toBeUndefined();
  });

  test('nothing typed and left open is not done', () => {
    expect(answer({ leftOpen: 'yes' })).toEqual({ result: 'not-done', again: false });
  });

  test('a quiet test does not clear what was seen then, and readings count in place of what was quiet', () => {
    const seen = { result: 'opens', core: 'screen', again: 'yes' };
    expect(answer({ ...seen, ...sound })).toMatchObject({ result: 'opens', core: 'screen', again: true });
    expect(answer({ ...seen, ...sound, UVAfter: '9 Ω' })).toMatchObject({ result: 'opens', core: 'screen' });
    expect(answer({ ...seen, ...opensOnce })).toMatchObject({ core: 'screen', again: true });
    expect(answer({ ...seen, again: '', ...opensOnce })).toMatchObject({ core: 'power', again: false });
    expect(answer({ result: 'steady', again: 'yes', ...opensOnce })).toMatchObject({ result: 'opens', again: false });
    expect(answer({ result: 'not-done', ...sound })).toMatchObject({ result: 'steady', again: true });
  });
});
