import { describe, expect, it } from 'vitest';
import { metres, missing, ohms, overOhms, underOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, at, type Change, first, good, loops, moved, opens, phasesOf, quiet } from './sound.ts';

// Common practice, no source; the marks are the project's judgement.

const steady =
  'bend-loops-steady pass UVHigh VWHigh WUHigh PEHigh screenHigh brakeHigh sensorHigh feedbackHigh: bend-noise';
const cores = 'bend-core-ohms note UVRest VWRest WURest';
const hold = 'bend-hold-misses note: bend-hold-time';
const holds = 'bend-positions-hold pass: after-trip-point bend-positions';
const U = { UV: opens, WU: opens };
const leakLimits = 'machine-minimum-60204 after-trip-point';

describe('what is found, which readings it names, and what comes next', () => {
  const rows: [what: string, Change, lines: string[], next: string[]][] = [
    ['quiet', {}, [cores, steady, hold, holds], []],
    ['one end on', { end: 'on' }, ['bend-end-on undecided end', cores, steady, hold, holds], ['free-both-ends']],
    [
      'ends not stated',
      { end: 'not-stated' },
      ['bend-end-not-stated undecided end', cores, steady, hold, holds],
      ['free-both-ends'],
    ],
    [
      'meter not stated',
      { meter: 'not-stated' },
      ['bend-meter-not-stated undecided meter', cores, steady, hold, holds],
      ['use-hold'],
    ],
    [
      'moved in part',
      { moved: 'part' },
      ['bend-moved-in-part undecided moved', cores, steady, hold, holds],
      ['move-whole-way'],
    ],
    [
      'moving not stated',
      { moved: 'not-stated' },
      ['bend-moved-not-stated undecided moved', cores, steady, hold, holds],
      ['move-whole-way'],
    ],
    [
      'further cores not stated',
      { idle: 'not-stated' },
      ['bend-idle-not-stated undecided idle', cores, steady, hold, holds],
      ['say-which-cores'],
    ],
    [
      'no screen, and none watched',
      { screen: 'none', ...first({ screen: moved() }) },
      [cores, steady.replace(' screenHigh', ''), hold, holds],
      [],
    ],
    [
      'screen not stated, and not watched',
      { screen: 'not-stated', ...first({ screen: moved() }) },
      ['bend-screen-not-stated undecided screen', cores, steady.replace(' screenHigh', ''), hold, holds],
      ['say-which-cores'],
    ],
    [
      'only a brake pair',
      { idle: 'brake', ...first({ sensor: moved() }) },
      [cores, steady.replace(' sensorHigh', ''), hold, holds],
      [],
    ],
    ['U opens once', first(U), [cores, 'bend-jumps fail UVHigh WUHigh: bend-jump', hold, holds], ['move-again']],
    [
      'U opens twice',
      { ...first(U), again: loops({ ...U, VW: quiet }), movedAgain: 'half' },
      [cores, 'bend-core-proven fail UVHigh WUHigh UVHigh2 WUHigh2: bend-jump', hold, holds],
      ['replace-bent-cable'],
    ],
    [
      'only in the second movement',
      { again: loops(U), movedAgain: 'cable' },
      [cores, 'bend-jumps fail UVHigh2 WUHigh2: bend-jump', hold, holds],
      ['clip-and-repeat'],
    ],
    [
      'plugged only',
      { again: loops({ UV: opens }), movedAgain: 'mated' },
      [cores, 'bend-joint-jumps fail UVHigh2: bend-jump', hold, holds],
      ['look-into-joint'],
    ],
    [
      'the second movement without its end',
      { ...first(U), again: loops({ UV: { ...opens, after: missing } }) },
      ['bend-loops-incomplete undecided UVHigh2', cores, 'bend-jumps fail UVHigh WUHigh: bend-jump', hold, holds],
      ['read-at-rest-twice', 'move-again'],
    ],
    [
      'open at rest',
      first({ PE: moved('OL') }),
      ['bend-open-at-rest fail PEHigh: open-on-any-range', cores, hold, holds],
      ['join-far-end'],
    ],
    [
      'tips moved',
      first({ PE: moved(0.4, 0.4, 0.4, 0.8) }),
      ['bend-tips-moved undecided PEHigh: bend-noise', cores, hold, holds],
      ['clip-and-repeat'],
    ],
    [
      'a loop that has more than any core',
      first({ PE: moved(31, 31, 31, 31) }),
      [cores.replace('bend-core', 'bend-rest-odd undecided PERest: bend-rest-most\nbend-core'), steady, hold, holds]
        .join('\n')
        .split('\n'),
      ['look-at-rest-first'],
    ],
    [
      'under the range of the meter',
      first({ PE: { rest: underOhms(0.1), lowest: underOhms(0.1), highest: ohms(0.2, 0.1), after: underOhms(0.1) } }),
      [cores, steady, hold, holds],
      [],
    ],
    [
      'the range at rest is not known',
      first({ PE: { ...quiet, rest: overOhms(20) } }),
      ['bend-over-range undecided PEHigh', 'bend-rest-odd undecided PERest: bend-rest-most', cores, hold, holds],
      ['note-bend-range', 'look-at-rest-first'],
    ],
    [
      'a leak that comes with the bend',
      at(good, phasesOf(1.8e9, 6e5, 1.8e9), good),
      [cores, steady, hold, `bend-leaks fail P2V: ${leakLimits}`],
      ['bend-once-more'],
    ],
    [
      'twice',
      { ...at(good, phasesOf(6e5, 6e5, 1.8e9), good), badAgain: phasesOf(1.8e9, 6e5, 1.8e9) },
      [cores, steady, hold, `bend-leak-proven fail P2V badAgainV: ${leakLimits}`, `bend-leaks fail P2U: ${leakLimits}`],
      ['replace-bent-cable', 'bend-once-more'],
    ],
    [
      'only once more',
      { badAgain: phasesOf(6e5, 1.8e9, 1.8e9) },
      [cores, steady, hold, `bend-leaks fail badAgainU: ${leakLimits}`],
      ['bend-once-more'],
    ],
    [
      'low in two of four',
      at(good, phasesOf(5e7, 1.8e9, 1.8e9), good, phasesOf(1.8e9, 1.8e9, 4e7)),
      [cores, steady, hold, `bend-insulation-low undecided P2U P4W: ${leakLimits}`],
      ['separate-first'],
    ],
    [
      'voltage and rest not stated',
      { testVoltage: missing, whileOn: 'not-stated' },
      [
        cores,
        steady,
        hold,
        holds,
        'bend-rest-not-stated undecided whileOn',
        'test-voltage-missing undecided testVoltage',
      ],
      ['fix-before-test', 'set-500-volts'],
    ],
    [
      'just below 500 V',
      { testVoltage: volts(499) },
      [cores, steady, hold, holds, 'test-voltage-too-low undecided testVoltage: test-voltage-machine-circuits'],
      ['set-500-volts'],
    ],
    [
      'both dangers',
      { meter: 'tester', whileOn: 'moved' },
      ['bend-tester-while-moved stop meter', 'bend-moved-under-voltage stop whileOn'],
      ['use-low-voltage-meter', 'fix-before-test'],
    ],
    ['impossible', { testVoltage: volts(-1) }, ['figure-impossible undecided testVoltage'], ['read-figure-again']],
  ];
  it.each(rows)('%s', (_, change, lines, next) => {
    const assessment = assess(change);
    expect(assessment.findings.map(lineWithLimits)).toEqual(lines);
    expect(assessment.next.map(({ code }) => code)).toEqual(next);
  });

  it('nothing at all', () => {
    const nothing = assess({ loops: loops({}), ...at(), screen: 'none', idle: 'none' });
    expect(nothing.findings.map(lineWithLimits)).toEqual([
      'bend-loops-missing undecided UVHigh VWHigh WUHigh PEHigh',
      hold,
      'bend-feedback-not-watched note feedbackHigh',
      'bend-positions-missing undecided: bend-positions',
    ]);
    expect(nothing.verdict).toBe('undecided');
  });

  it('a statement that nobody knows counts as not made', () => {
    const unknown = 'perhaps' as 'not-stated';
    const codes = assess({
      ...{ end: unknown, meter: unknown, moved: unknown, screen: unknown, idle: unknown, whileOn: unknown },
      ...first({ screen: moved() }),
    }).findings.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining([
        ...['bend-end-not-stated', 'bend-meter-not-stated', 'bend-moved-not-stated', 'bend-screen-not-stated'],
        ...['bend-idle-not-stated', 'bend-rest-not-stated'],
      ]),
    );
  });

  // 40 m of 1.5 mm²: 0.532 Ω a core; there and back · 1.25 + 0.3 = 1.63 Ω at the most, one core at the least.
  it.each([
    [0.52, true],
    [0.54, false],
    [1.62, false],
    [1.63, true],
  ])('%d Ω at rest by length is odd: %s', (one, odd) => {
    const each = moved(one, one, one, one);
    const change = { ...first({ UV: each, VW: each, WU: each }), metres: metres(40), squareMillimetres: 1.5 };
    expect(assess(change).findings.some(({ code }) => code === 'bend-rest-odd')).toBe(odd);
  });
});
