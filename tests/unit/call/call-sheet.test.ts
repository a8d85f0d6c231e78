import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Thing, things } from '../../../src/call/rule/bring.ts';
import { callSheet } from '../../../src/call/rule/call-sheet.ts';
import type { CallFacts } from '../../../src/call/rule/facts.ts';
import { hoursToPlan } from '../../../src/call/rule/plan.ts';
import type { SafetyWord } from '../../../src/call/rule/safety.ts';
import type { Question } from '../../../src/call/rule/to-ask.ts';
import { anyCall } from './any-call.ts';
import { sheetOf } from './call.ts';

// Common practice and project judgement, no source.

describe('what the caller is asked to do', () => {
  test.each<[string, Partial<CallFacts>, SafetyWord[]]>([
    ['nothing known', {}, ['under-axis', 'prop', 'leave-off', 'closed', 'traces']],
    ['it can’t fall', { canFall: 'no' }, ['leave-off', 'closed', 'traces']],
    [
      'it can fall, propped',
      { canFall: 'yes', propped: 'yes' },
      ['under-axis', 'leave-prop', 'leave-off', 'closed', 'traces'],
    ],
    [
      'it can fall, not propped',
      { canFall: 'yes', propped: 'no' },
      ['under-axis', 'prop', 'leave-off', 'closed', 'traces'],
    ],
    ['reset five times', { canFall: 'no', resets: 5 }, ['leave-off', 'reset-enough', 'closed', 'traces']],
    ['burnt', { canFall: 'no', seen: ['drive-burnt'] }, ['burnt', 'leave-off', 'closed', 'traces']],
    ['wet', { canFall: 'no', seen: ['motor-wet'] }, ['leave-off', 'wet', 'closed', 'traces']],
    [
      'a second drive trips too',
      { canFall: 'no', tried: { 'other-drive': 'trips' } },
      ['leave-off', 'no-other-drive', 'closed', 'traces'],
    ],
  ])('%s', (_name, said, words) => {
    expect(sheetOf(said).safety).toEqual(words);
  });

  test('whatever is said: it stays off and shut, and only a clear no lets an axis be taken for one that can’t fall', () => {
    fc.assert(
      fc.property(anyCall, (facts) => {
        const { safety } = callSheet(facts);
        expect(safety).toContain('leave-off');
        expect(safety).toContain('closed');
        expect(safety.includes('under-axis')).toBe(facts.canFall !== 'no');
        expect(safety.includes('prop') || safety.includes('leave-prop')).toBe(facts.canFall !== 'no');
      }),
    );
  });
});

describe('what is still to be asked', () => {
  const known: Partial<CallFacts> = {
    ...{ moment: 'on-enable', again: 'each', came: 3, of: 3, canFall: 'no', sharedDrive: 'no', high: 'no' },
    ...{ switcher: 'yes', nothingBefore: true, nothingSeen: true, tried: { 'leads-off': 'not-tried' } },
    noted: { message: true, detail: false, plates: true, spares: true, until: true },
  };
  test.each<[string, Partial<CallFacts>, Question[]]>([
    ['everything known: only the detail of the moment', {}, ['detail-on-enable']],
    [
      'whether it can fall comes first, with the prop',
      { canFall: undefined } as never,
      ['can-fall', 'propped', 'detail-on-enable'],
    ],
    ['it can fall', { canFall: 'yes' }, ['propped', 'detail-on-enable']],
    ['it came once: not how often', { again: 'once', came: undefined } as never, ['detail-on-enable']],
    ['a contradiction is asked again', { before: ['motor-changed'] }, ['detail-on-enable', 'changed']],
    [
      'water alone does not say what was changed',
      { before: ['water'], nothingBefore: false },
      ['detail-on-enable', 'changed'],
    ],
    [
      'no plates',
      { noted: { message: true, detail: false, plates: false, spares: true, until: true } },
      ['detail-on-enable', 'plates'],
    ],
  ])('%s', (_name, said, questions) => {
    expect(sheetOf({ ...known, ...said }).questions).toEqual(questions);
  });

  test('a moment that nobody saw is not asked for again, and every instrument is packed', () => {
    const unseen = sheetOf({ momentUnseen: true });
    expect(unseen.questions).not.toContain('moment');
    expect(unseen.bring).toEqual(sheetOf({}).bring);
  });

  test('nothing known: first who may be hurt, then the moment', () => {
    expect(sheetOf({}).questions.slice(0, 3)).toEqual(['can-fall', 'propped', 'moment']);
  });
});

describe('what to bring', () => {
  const has = (said: Partial<CallFacts>, thing: Thing) => sheetOf(said).bring.includes(thing);
  test.each<[Thing, Partial<CallFacts>, Partial<CallFacts>]>([
    ['prop', {}, { canFall: 'no' }],
    ['height', { high: 'yes' }, {}],
    ['braking-resistor', { moment: 'on-braking' }, { moment: 'on-enable' }],
    ['thermal-camera', { moment: 'when-hot' }, { moment: 'on-enable' }],
    ['heat-gloves', { moment: 'when-hot' }, { moment: 'on-enable' }],
    ['feedback-cable', { moment: 'control-off' }, { moment: 'on-enable' }],
    ['drive', { moment: 'on-enable' }, {}],
    ['surge-tester', {}, { moment: 'on-braking' }],
    ['drying', { moment: 'on-enable', seen: ['motor-wet'] }, { moment: 'on-enable' }],
  ])('%s', (thing, needed, notNeeded) => {
    expect(has(notNeeded, thing)).toBe(false);
    expect(has(needed, thing)).toBe(true);
  });

  test('whatever is said: meter, proof, insulation tester, fuses, lockout and protection', () => {
    const always: Thing[] = [
      'multimeter',
      'proving-unit',
      'insulation-tester',
      'meter-fuses',
      'lockout',
      'arc-and-shock',
    ];
    fc.assert(
      fc.property(anyCall, (facts) => {
        const { bring } = callSheet(facts);
        expect(bring).toEqual(expect.arrayContaining(always));
        expect(bring.includes('prop')).toBe(facts.canFall !== 'no');
      }),
    );
  });

  test('without the moment no instrument is left at home, and no spare part is loaded', () => {
    const { bring } = sheetOf({});
    const instruments = (Object.keys(things) as Thing[]).filter((thing) => things[thing].group === 'instruments');
    expect(bring).toEqual(expect.arrayContaining(instruments));
    expect(bring.filter((thing) => things[thing].group === 'spares')).toEqual([]);
  });
});

describe('people, permits and time', () => {
  test('a second person unless no axis can fall and no cable is bent', () => {
    expect(sheetOf({}).people).toContain('second');
    expect(sheetOf({ canFall: 'no', moment: 'on-enable' }).people).toEqual(['you', 'switcher']);
    expect(sheetOf({ canFall: 'no', moment: 'position-or-cable' }).people).toContain('second');
    expect(sheetOf({ canFall: 'yes' }).people).toContain('rigger');
    expect(sheetOf({ before: ['parameters-changed'] }).people).toContain('programmer');
    expect(sheetOf({ high: 'yes' }).permits).toEqual(['lockout', 'look-live', 'height']);
  });

  // By hand from the minutes of the steps: 1+1+12+12+6+5+2+4+3+16 = 62. Then 30+8+10+10, three tries of 4, and the
  // suspects on enable: 45+20+60+60+45+5 = 235.
  test('on enable, no axis can fall', () => {
    expect(sheetOf({ moment: 'on-enable', canFall: 'no' }).minutes).toEqual({ least: 62, most: 367 });
  });

  // Besides: support 10, hand test 10, bend test 25.
  test('at one position, unknown whether it can fall', () => {
    expect(sheetOf({ moment: 'position-or-cable' }).minutes.least).toBe(107);
  });

  // Besides: support 10, feedback off 3, a try 4, the second lockout 12, plugging 5.
  test('with the control off', () => {
    expect(sheetOf({ moment: 'control-off' }).minutes.least).toBe(96);
  });

  test.each([
    [62, 1.5],
    [60, 1],
    [61, 1.5],
    [1, 0.5],
  ])('%d minutes are planned as %d hours', (minutes, hours) => {
    expect(hoursToPlan(minutes)).toBe(hours);
  });
});
