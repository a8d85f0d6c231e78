import { describe, expect, it } from 'vitest';
import type { DiodeRows } from '../../../../support/diode-cases.ts';
import { linesOf } from './lines-of.ts';

const good = '480k | 490k | 485k';
const goodMinus = '46k | 45.8k | 46.1k';
const openRail = '>72M | >72M | >72M';
const minusShort: DiodeRows = { minusForward: '0.41 | 0.003 | 0.41', minusReverse: 'OL | 0.003 | OL' };
const minusLeaky: DiodeRows = { minusReverse: 'OL | 1.1 | OL' };
const minusOpen: DiodeRows = { minusForward: '0.41 | OL | 0.41' };
const shortV = 'minusForwardV minusReverseV: diode-short';
const leakyV = 'minusForwardV minusReverseV: diode-blocking';

type Row = [what: string, DiodeRows, drive: BridgeDrive, said: string[], next: string[]];
type BridgeDrive = 'sound' | 'convicted' | 'suspect' | 'open';
const withMinus = (minus: string, rows: DiodeRows = {}): DiodeRows => ({ ...rows, resistance: [good, minus] });

describe('what the resistances add, and what comes next', () => {
  const rows: Row[] = [
    ['both pass', withMinus(goodMinus), 'sound', ['tests-agree note', 'diode-passed note'], ['test-insulation-next']],
    [
      'both name one short',
      withMinus('46k | 3.8 Ω | 46.1k', minusShort),
      'convicted',
      [`diode-short fail ${shortV}`, 'resistance-fails fail minusV', 'tests-agree note', 'diode-failed note'],
      ['replace-complete-drive', 'test-motor-and-cable'],
    ],
    [
      'both name shorts, one of them only by resistance',
      withMinus('4 Ω | 3.8 Ω | 46.1k', { ...minusShort, minusForward: ' | 0.003 | 0.41' }),
      'convicted',
      [
        'diode-incomplete undecided minusForwardU',
        `diode-short fail ${shortV}`,
        'resistance-fails fail minusU minusV',
        'diode-more-than-one caution',
        'diode-failed note',
      ],
      ['measure-missing', 'replace-complete-drive', 'test-motor-and-cable'],
    ],
    [
      'a short only by resistance',
      withMinus('46k | 3.8 Ω | 46.1k'),
      'open',
      ['tests-contradict undecided minusV'],
      ['repeat-both-tests'],
    ],
    [
      'a short only by the diode test proves nothing, and is kept as a caution',
      withMinus(goodMinus, minusShort),
      'open',
      [`diode-short caution ${shortV}`, 'tests-contradict undecided minusV'],
      ['repeat-both-tests'],
    ],
    [
      'a leak of the diode test that the resistances do not have',
      withMinus(goodMinus, minusLeaky),
      'open',
      [`diode-leaky caution ${leakyV}`, 'tests-contradict undecided minusV'],
      ['repeat-both-tests'],
    ],
    [
      'a leak of both',
      withMinus('46k | 5k | 46.1k', minusLeaky),
      'suspect',
      [`diode-leaky fail ${leakyV}`, 'resistance-fails fail minusV', 'tests-agree note', 'diode-suspect note'],
      ['keep-power-off', 'repeat-position'],
    ],
    [
      'a leak of both that the other rail reads too, through the bleed resistor',
      { ...minusLeaky, resistance: ['480k | 46k | 485k', '46k | 5k | 46.1k'] },
      'suspect',
      [
        `diode-leaky fail ${leakyV}`,
        'resistance-explained note plusV',
        'resistance-fails fail minusV',
        'tests-agree note',
        'diode-suspect note',
      ],
      ['keep-power-off', 'repeat-position'],
    ],
    [
      'a leak of both among three unlike resistances: the others of its rail are not explained by it',
      withMinus('46k | 5k | 9k', minusLeaky),
      'suspect',
      [
        `diode-leaky fail ${leakyV}`,
        'resistance-finds-leak fail minusU minusW',
        'resistance-fails fail minusV',
        'diode-more-than-one caution',
        'diode-suspect note',
      ],
      ['keep-power-off', 'repeat-position'],
    ],
    [
      'a leak that only the diode test has explains no leak of the other rail',
      { ...minusLeaky, resistance: ['480k | 46k | 485k', goodMinus] },
      'suspect',
      [
        `diode-leaky caution ${leakyV}`,
        'tests-contradict undecided minusV',
        'resistance-finds-leak fail plusV',
        'diode-suspect note',
      ],
      ['repeat-both-tests', 'keep-power-off', 'repeat-position'],
    ],
    [
      'a reading of the blocking row that lacks, beside good resistances',
      { minusReverse: 'OL | | OL', resistance: [good, goodMinus] },
      'open',
      ['diode-incomplete undecided minusReverseV'],
      ['measure-missing'],
    ],
    [
      'a leak that the diode test can’t see',
      withMinus('46k | 9.4k | 46.1k'),
      'suspect',
      ['resistance-finds-leak fail minusV', 'diode-suspect note'],
      ['keep-power-off', 'repeat-position'],
    ],
    [
      'an open diode, which the resistances can’t see',
      withMinus(goodMinus, minusOpen),
      'suspect',
      ['diode-forward-open fail minusForwardV', 'resistance-sees-less note minusV', 'diode-suspect note'],
      ['repeat-position', 'keep-power-off'],
    ],
    [
      'a contradiction beside an open diode: only what is not contradicted is seen less',
      {
        ...minusOpen,
        plusForward: '0.002 | 0.41 | 0.41',
        plusReverse: '0.002 | OL | OL',
        resistance: [good, goodMinus],
      },
      'suspect',
      [
        'diode-short caution plusForwardU plusReverseU: diode-short',
        'diode-forward-open fail minusForwardV',
        'tests-contradict undecided plusU',
        'resistance-sees-less note minusV',
        'diode-suspect note',
      ],
      ['repeat-position', 'repeat-both-tests', 'keep-power-off'],
    ],
    [
      'resistances that lack one',
      withMinus('46k | | 46.1k'),
      'open',
      ['resistance-undecided undecided'],
      ['complete-resistances'],
    ],
    [
      'a short of which the resistance was not read',
      withMinus('46k | | 46.1k', minusShort),
      'convicted',
      [`diode-short fail ${shortV}`, 'resistance-undecided undecided', 'diode-failed note'],
      ['complete-resistances', 'replace-complete-drive', 'test-motor-and-cable'],
    ],
    [
      'six open resistances, and diodes that conduct',
      { resistance: [openRail, openRail] },
      'sound',
      ['tests-agree note', 'diode-passed note'],
      ['test-insulation-next'],
    ],
    [
      'six open resistances, and a diode that does not conduct: the leads may be off',
      { ...minusOpen, resistance: [openRail, openRail] },
      'suspect',
      ['diode-forward-open fail minusForwardV', 'resistance-undecided undecided', 'diode-suspect note'],
      ['repeat-position', 'complete-resistances', 'keep-power-off'],
    ],
    [
      'a diode test that lacks one agrees with nothing',
      { plusForward: '0.41 | | 0.41', resistance: [good, goodMinus] },
      'open',
      ['diode-incomplete undecided plusForwardV'],
      ['measure-missing'],
    ],
  ];
  it.each(rows)('%s', (_, own, drive, said, next) => {
    const lines = linesOf(own);
    expect(lines.said).toEqual(said);
    expect(lines.drive).toBe(drive);
    expect(lines.next).toEqual(next);
  });

  it('six open ones say nothing while the motor may be on, whatever the diodes do', () => {
    const lines = linesOf({ resistance: [openRail, openRail] }, { motorLeads: 'not-stated' });
    expect(lines.said).toContain('resistance-undecided undecided');
  });

  it('of which nobody knows the order are asked for first', () => {
    const lines = linesOf(withMinus(goodMinus), { resistanceOrder: 'after' });
    expect(lines.said).toContain('resistances-after-diodes caution resistanceOrder');
  });
});

describe('exactly at a limit', () => {
  const codes = (...given: Parameters<typeof linesOf>) => linesOf(...given).said.map((text) => text.split(' ')[0]);

  it('1 kΩ contradicts a sound position, an ohm more is a leak', () => {
    expect(codes(withMinus('46k | 1000 Ω | 46.1k'))).toEqual(['tests-contradict']);
    expect(codes(withMinus('46k | 1001 Ω | 46.1k'))).toContain('resistance-finds-leak');
  });

  it('1 kΩ does not contradict a short of the diode test, an ohm more does', () => {
    expect(codes(withMinus('46k | 1000 Ω | 46.1k', minusShort))).not.toContain('tests-contradict');
    expect(codes(withMinus('46k | 1001 Ω | 46.1k', minusShort))).toContain('tests-contradict');
  });

  it('10 kΩ contradicts a path that keeps the diode test below 1.5 V', () => {
    expect(codes(withMinus('46k | 10 kΩ | 46.1k', minusLeaky))).toContain('tests-contradict');
    expect(codes(withMinus('46k | 9.99 kΩ | 46.1k', minusLeaky))).not.toContain('tests-contradict');
  });

  it('OL on a range not noted contradicts a short, a bound below the short does not', () => {
    expect(codes(withMinus('46k | OL | 46.1k', minusShort))).toContain('tests-contradict');
    expect(codes(withMinus('46k | >600 Ω | 46.1k', minusShort))).not.toContain('tests-contradict');
    expect(codes(withMinus('46k | >1000 Ω | 46.1k', minusShort))).not.toContain('tests-contradict');
    expect(codes(withMinus('46k | >1001 Ω | 46.1k', minusShort))).toContain('tests-contradict');
  });
});
