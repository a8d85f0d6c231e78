import { describe, expect, it } from 'vitest';
import { metres, missing, ohms, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { allQuiet, assess, at, type Change, first, good, loops, moved, opens, phasesOf, quiet } from './sound.ts';

// Common practice, no source: the marks of noise and jump are judgement. 1 MΩ and 500 V: IEC 60204-1, 18.3. Ohms of a
// core: IEC 60228, class 5.

const U = { UV: opens, WU: opens };
const again = (change: Parameters<typeof loops>[0]): Change => ({ again: loops(change), movedAgain: 'cable' });

describe('cables worked out by hand', () => {
  const rows: [what: string, Change, verdict: string, code: string, cable: string, step?: string][] = [
    ['quiet, and 500 V in three positions', {}, 'go', 'bend-loops-steady', 'steady'],
    // Highest 0.475 with half a step; 0.475 − 0.415 = 0.06 Ω.
    [
      'at the noise: 0.70 against 0.42 Ω',
      first({ UV: moved(0.42, 0.42, 0.7, 0.42) }),
      'go',
      'bend-loops-steady',
      'steady',
    ],
    // 0.725 − 0.415 = 0.31 Ω.
    [
      'just above it',
      first({ UV: moved(0.42, 0.42, 0.72, 0.42) }),
      'undecided',
      'bend-unclear',
      'open',
      'clip-and-repeat',
    ],
    // 1.425 − 0.425 = 1.00 Ω.
    ['at the jump', first({ UV: moved(0.42, 0.42, 1.43, 0.42) }), 'undecided', 'bend-unclear', 'open'],
    ['just beyond it', first({ UV: moved(0.42, 0.42, 1.45, 0.42) }), 'no-go', 'bend-jumps', 'suspect', 'move-again'],
    ['core U opens once', first(U), 'no-go', 'bend-jumps', 'suspect', 'move-again'],
    [
      'core U opens twice',
      { ...first(U), ...again(U) },
      'no-go',
      'bend-core-proven',
      'proven-bad',
      'replace-bent-cable',
    ],
    ['U, then V', { ...first(U), ...again({ UV: opens, VW: opens, WU: quiet }) }, 'no-go', 'bend-jumps', 'suspect'],
    ['U, then quiet', { ...first(U), ...again({ UV: quiet, VW: quiet, WU: quiet }) }, 'no-go', 'bend-jumps', 'suspect'],
    ['one loop alone, twice', { ...first({ UV: opens }), ...again({ UV: opens }) }, 'no-go', 'bend-jumps', 'suspect'],
    [
      'all three, twice: the joint',
      { ...first({ ...U, VW: opens }), ...again({ ...U, VW: opens }) },
      'no-go',
      'bend-jumps',
      'suspect',
    ],
    ['U twice, plugs moved too', { ...first(U), ...again(U), movedAgain: 'all' }, 'no-go', 'bend-jumps', 'suspect'],
    ['U twice, not said what was moved', { ...first(U), again: loops(U) }, 'no-go', 'bend-jumps', 'suspect'],
    [
      'U twice, one end on',
      { ...first(U), ...again(U), end: 'on' },
      'no-go',
      'bend-jumps',
      'suspect',
      'free-both-ends',
    ],
    [
      'U twice, only the half of the connector',
      { ...first(U), ...again(U), movedAgain: 'half' },
      'no-go',
      'bend-core-proven',
      'proven-bad',
    ],
    ['only plugged', { again: loops(U), movedAgain: 'mated' }, 'no-go', 'bend-joint-jumps', 'open', 'look-into-joint'],
    ['open, then plugged', { ...first(U), again: loops(U), movedAgain: 'mated' }, 'no-go', 'bend-jumps', 'suspect'],
    ['PE twice', { ...first({ PE: opens }), ...again({ PE: opens }) }, 'no-go', 'bend-core-proven', 'proven-bad'],
    [
      'the brake pair twice',
      { ...first({ brake: opens }), ...again({ brake: opens }) },
      'no-go',
      'bend-core-proven',
      'proven-bad',
    ],
    [
      'the feedback pair twice',
      { ...first({ feedback: opens }), ...again({ feedback: opens }) },
      'no-go',
      'bend-core-proven',
      'open',
    ],
    [
      'tips moved',
      first({ UV: moved(0.42, 0.4, 'OL', 0.9) }),
      'undecided',
      'bend-tips-moved',
      'open',
      'clip-and-repeat',
    ],
    ['it stays open', first({ UV: moved(0.42, 0.4, 'OL', 'OL') }), 'undecided', 'bend-tips-moved', 'open'],
    [
      'open at rest',
      first({ UV: moved('OL', 'OL', 'OL', 'OL') }),
      'no-go',
      'bend-open-at-rest',
      'suspect',
      'join-far-end',
    ],
    ['lower while moved', first({ UV: moved(3, 2.5, 3, 3) }), 'undecided', 'bend-dips', 'open'],
    ['held readings that do not fit', first({ UV: moved(3, 1, 2, 3) }), 'undecided', 'bend-contradicts', 'open'],
    [
      'over a low range',
      first({ UV: { ...quiet, highest: overOhms(1) } }),
      'undecided',
      'bend-over-range',
      'open',
      'note-bend-range',
    ],
    ['over 200 Ω', first({ UV: { ...quiet, highest: overOhms(200) } }), 'no-go', 'bend-jumps', 'suspect'],
    ['a coarse display', first({ UV: { ...quiet, highest: ohms(1, 1) } }), 'undecided', 'bend-unclear', 'open'],
    ['no lowest', first({ UV: { ...quiet, lowest: missing } }), 'undecided', 'bend-loops-incomplete', 'open'],
    [
      'no highest',
      first({ UV: { ...quiet, highest: missing } }),
      'undecided',
      'bend-loops-incomplete',
      'open',
      'read-at-rest-twice',
    ],
    ['PE not watched', first({ PE: moved() }), 'undecided', 'bend-loops-missing', 'open', 'watch-loops'],
    ['no brake core watched', first({ brake: moved() }), 'undecided', 'bend-loops-missing', 'open'],
    ['by eye', { meter: 'watched' }, 'undecided', 'bend-watched-by-eye', 'open', 'use-hold'],
    ['moved once', { moved: 'once' }, 'undecided', 'bend-moved-once', 'open', 'move-whole-way'],
    [
      'an insulation tester',
      { meter: 'tester' },
      'undecided',
      'bend-tester-while-moved',
      'open',
      'use-low-voltage-meter',
    ],
    ['moved under voltage', { whileOn: 'moved' }, 'undecided', 'bend-moved-under-voltage', 'open', 'fix-before-test'],
    [
      'V leaks in position 2',
      at(good, phasesOf(1.8e9, 6e5, 1.8e9), good),
      'no-go',
      'bend-leaks',
      'suspect',
      'bend-once-more',
    ],
    [
      'V leaks there twice',
      { ...at(good, phasesOf(1.8e9, 6e5, 1.8e9), good), badAgain: phasesOf(1.8e9, 7e5, 1.8e9) },
      'no-go',
      'bend-leak-proven',
      'proven-bad',
      'replace-bent-cable',
    ],
    [
      'V, then W',
      { ...at(good, phasesOf(1.8e9, 6e5, 1.8e9), good), badAgain: phasesOf(1.8e9, 1.8e9, 7e5) },
      'no-go',
      'bend-leaks',
      'suspect',
    ],
    [
      'leaks everywhere',
      at(phasesOf(6e5), phasesOf(6e5), phasesOf(6e5)),
      'no-go',
      'bend-leaks-everywhere',
      'suspect',
      'separate-first',
    ],
    [
      'low everywhere',
      at(phasesOf(7e7), phasesOf(7e7), phasesOf(7e7)),
      'undecided',
      'bend-insulation-low',
      'open',
      'separate-first',
    ],
    ['at 1 MΩ', at(good, phasesOf(1.02e6), good), 'undecided', 'bend-insulation-low', 'open'],
    ['two positions', at(good, good), 'undecided', 'bend-positions-missing', 'open', 'test-in-positions'],
    ['a position without W', at(good, good, { ...good, W: missing }), 'undecided', 'bend-positions-incomplete', 'open'],
    ['at 250 V', { testVoltage: volts(250) }, 'undecided', 'test-voltage-too-low', 'open', 'set-500-volts'],
    [
      'OL of a tester without its range',
      at(good, good, { ...good, U: overOhms() }),
      'undecided',
      'bend-insulation-low',
      'open',
    ],
    // 20 m of 1.5 mm²: 0.266 Ω a core; there and back 0.532, · 1.25 + 0.3 = 0.965 Ω.
    [
      'as long as it reads',
      { metres: metres(20), squareMillimetres: 1.5, ...first({}) },
      'go',
      'bend-core-ohms',
      'steady',
    ],
    [
      'more than its length explains',
      { metres: metres(20), squareMillimetres: 1.5, loops: loops({}, moved(0.97, 0.97, 0.97, 0.97)) },
      'undecided',
      'bend-rest-odd',
      'open',
      'look-at-rest-first',
    ],
    ['half of the copper', { metres: metres(40), squareMillimetres: 1.5 }, 'undecided', 'bend-rest-odd', 'open'],
    // U has (1.02 + 1.02 − 0.42) / 2 = 0.81 Ω, V and W 0.21 Ω.
    [
      'core U has more at rest',
      first({ UV: moved(1.02, 1, 1.05, 1.02), WU: moved(1.02, 1, 1.05, 1.02) }),
      'undecided',
      'bend-cores-uneven',
      'open',
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, code, cable, step) => {
    const { verdict: given, findings, next, parts } = assess(change);
    expect([given, parts.cable, findings.map((one) => one.code)]).toEqual([
      verdict,
      cable,
      expect.arrayContaining([code]),
    ]);
    if (step !== undefined) expect(next.map((one) => one.code)).toContain(step);
  });

  it('three loops give each core at rest', () => {
    const uneven = first({ UV: moved(1.02, 1, 1.05, 1.02), WU: moved(1.02, 1, 1.05, 1.02) });
    const ohmsOf = assess(uneven).findings.find((one) => one.code === 'bend-core-ohms')?.ohms;
    expect([ohmsOf?.U, ohmsOf?.V, ohmsOf?.W].map((one) => one?.toFixed(2))).toEqual(['0.81', '0.21', '0.21']);
  });

  it('names the core that both loops share', () => {
    const cores = [
      [{ UV: opens, WU: opens }, 'U'],
      [{ UV: opens, VW: opens }, 'V'],
      [{ VW: opens, WU: opens }, 'W'],
      [{ PE: opens }, 'PE'],
      [{ screen: opens }, 'screen'],
      [{ sensor: opens }, 'sensor'],
      [{ UV: opens, WU: opens, PE: opens, screen: opens }, 'U'],
      [{ UV: opens }, ''],
      [{ UV: opens, PE: opens }, ''],
    ] as const;
    for (const [change, named] of cores) {
      const jumped = assess(first(change)).findings.find((one) => one.code === 'bend-jumps');
      expect([change, jumped?.cores.join()]).toEqual([change, named]);
    }
  });

  it('asks a second movement of all three power loops if one jumps', () => {
    expect(assess(first({ UV: opens })).repeat).toEqual(['UV', 'VW', 'WU']);
    expect(assess(first({ PE: opens })).repeat).toEqual(['PE']);
    expect(assess().repeat).toEqual([]);
  });

  it('says beside every verdict what the hold misses, and that feedback was not watched', () => {
    const codes = assess({ loops: { ...allQuiet, feedback: moved() } }).findings.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['bend-hold-misses', 'bend-feedback-not-watched']));
    expect(assess().findings.map(({ code }) => code)).not.toContain('bend-feedback-not-watched');
  });

  it('the feedback cable is its own part', () => {
    const twice = { ...first({ feedback: opens }), ...again({ feedback: opens }) };
    expect(assess(twice).parts.feedbackCable).toBe('proven-bad');
    expect(assess(first({ feedback: opens })).parts.feedbackCable).toBe('suspect');
    expect(assess().parts).toEqual({ cable: 'steady', feedbackCable: 'steady' });
    expect(assess({ loops: { ...allQuiet, feedback: moved() } }).parts.feedbackCable).toBe('open');
  });
});
