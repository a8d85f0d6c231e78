import { coreSections } from '../../kernel/electrics/core-resistance.ts';
import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import { sameFields } from '../../kernel/form/opening.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { bendTest } from './about.ts';
import { bendFields, places } from './fields.ts';
import { bendHeadline } from './headline.ts';
import { assessBendTest } from './rule/assess.ts';
import { type BendAssessment, type BendInput, type LoopId, loopIds, type Sweep } from './rule/input.ts';
import { bendFindings, bendSteps } from './words.ts';

function oneOf<T extends string>(value: string | undefined, known: readonly T[]): T | 'not-stated' {
  return known.find((one) => one === value) ?? 'not-stated';
}

export function bendInput(read: ReadForm): BendInput {
  const { choices } = read;
  const of = (id: string) => read.readings[id] ?? missing;
  const three = (row: string) => ({ U: of(`${row}U`), V: of(`${row}V`), W: of(`${row}W`) });
  const sweep = (loop: LoopId, which: '' | '2'): Sweep => ({
    rest: of(`${loop}Rest${which}`),
    lowest: of(`${loop}Low${which}`),
    highest: of(`${loop}High${which}`),
    after: of(`${loop}After${which}`),
  });
  const loops = (which: '' | '2') =>
    Object.fromEntries(loopIds.map((loop) => [loop, sweep(loop, which)])) as Record<LoopId, Sweep>;
  const squareMillimetres = coreSections.find((one) => String(one) === choices.section);
  return {
    end: oneOf(choices.end, ['off', 'on']),
    meter: oneOf(choices.meter, ['hold', 'watched', 'tester']),
    moved: oneOf(choices.moved, ['twice', 'once', 'part']),
    loops: loops(''),
    screen: oneOf(choices.screen, ['fitted', 'none']),
    idle: oneOf(choices.idle, ['both', 'brake', 'sensor', 'none']),
    again: loops('2'),
    movedAgain: oneOf(choices.movedAgain, ['cable', 'half', 'mated', 'all']),
    whileOn: oneOf(choices.whileOn, ['at-rest', 'moved']),
    testVoltage: of('testVoltage'),
    positions: places.map((place) => three(`P${place}`)),
    badAgain: three('badAgain'),
    metres: of('metres'),
    ...(squareMillimetres !== undefined && { squareMillimetres }),
  };
}

export const calculator = defineCalculator<BendAssessment>({
  ...bendTest,
  judgesFrom: 'meter',
  fields: bendFields,
  assess: (read) => assessBendTest(bendInput(read)),
  findingTexts: bendFindings,
  stepTexts: bendSteps,
  headline: bendHeadline,
  inSight: ['bend-hold-misses', 'bend-feedback-not-watched', 'bend-jumps'],
  opens: {
    'separate-first': { calculator: 'isolation', words: 'Cable or motor', carries: sameFields('testVoltage') },
    'look-at-rest-first': {
      calculator: 'core-resistance',
      words: 'PE and cores by length',
      carries: sameFields('metres', 'section'),
    },
    'join-far-end': {
      calculator: 'core-resistance',
      words: 'PE and cores by length',
      carries: sameFields('metres', 'section'),
    },
  },
});
