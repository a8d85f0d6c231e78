import { describe, expect, it } from 'vitest';
import { assessBridgeDiode, type BridgeDiodeInput } from '../../../../../src/calculators/bridge-diode/rule/assess.ts';
import { type DiodeRows, diodeInput } from '../../../../support/diode-cases.ts';
import { found } from '../../../../support/found.ts';
import { typed } from '../../../../support/typed.ts';
import { linesOf } from './lines-of.ts';

const volts = (text: string) => typed(text, 'voltage');
const alike = '0.41 | 0.41 | 0.41';
const open = 'OL | OL | OL';
const minusShort: DiodeRows = { minusForward: '0.41 | 0.003 | 0.41', minusReverse: 'OL | 0.003 | OL' };
const plusShort: DiodeRows = { plusForward: '0.002 | 0.41 | 0.41', plusReverse: '0.002 | OL | OL' };
const again = ['repeat-position', 'keep-power-off'];
const suspect = 'diode-suspect note';
const allPlus = 'plusForwardU plusReverseU plusForwardV plusReverseV plusForwardW plusReverseW';

describe('which readings and limits each finding names, and what comes next', () => {
  const rows: [what: string, DiodeRows, Partial<BridgeDiodeInput>, said: string[], next: string[]][] = [
    ['a sound stage', {}, {}, ['diode-passed note'], ['take-resistances', 'test-insulation-next']],
    [
      'a bus of which nothing is known',
      {},
      { busVoltage: volts('') },
      ['bus-not-measured undecided busVoltage: touch-voltage'],
      ['measure-bus'],
    ],
    [
      'some volts on the bus',
      {},
      { busVoltage: volts('3 V') },
      ['bus-residual-voltage undecided busVoltage: resistance-residual-voltage'],
      ['discharge-residual'],
    ],
    [
      'the motor beside the stage',
      {},
      { motorLeads: 'connected' },
      ['motor-leads-connected undecided motorLeads'],
      ['take-motor-leads-off'],
    ],
    [
      'motor leads of which nothing is stated',
      {},
      { motorLeads: 'not-stated' },
      ['motor-leads-not-stated undecided motorLeads'],
      ['take-resistances', 'state-motor-leads'],
    ],
    [
      'readings of which nobody says that they stand still',
      {},
      { steadiness: 'not-stated' },
      ['diode-steadiness-not-stated undecided steadiness'],
      ['take-resistances', 'let-readings-settle'],
    ],
    [
      'readings that drift',
      {},
      { steadiness: 'drifting' },
      ['diode-drifting stop steadiness'],
      ['wait-and-measure-bus'],
    ],
    [
      'readings below zero',
      { plusForward: '-0.2 | 0.41 | 0.41', minusReverse: 'OL | -12 V | OL' },
      {},
      ['diode-negative stop plusForwardU minusReverseV'],
      ['wait-and-measure-bus'],
    ],
    [
      'readings that lack',
      { plusForward: '0.41 | | 0.41', plusReverse: 'OL | OL | ' },
      {},
      ['diode-incomplete undecided plusForwardV plusReverseW'],
      ['measure-missing', 'take-resistances'],
    ],
    [
      'a rail of which nothing is read',
      { plusForward: ' | | ', plusReverse: ' | | ' },
      {},
      [`diode-incomplete undecided ${allPlus}`],
      ['measure-missing', 'take-resistances'],
    ],
    [
      'a short both ways round',
      minusShort,
      {},
      ['diode-short fail minusForwardV minusReverseV: diode-short', 'diode-failed note'],
      ['replace-complete-drive', 'test-motor-and-cable'],
    ],
    [
      'a short of each rail',
      { ...minusShort, ...plusShort },
      {},
      [
        'diode-short fail plusForwardU plusReverseU: diode-short',
        'diode-short fail minusForwardV minusReverseV: diode-short',
        'diode-more-than-one caution',
        'diode-failed note',
      ],
      ['replace-complete-drive', 'test-motor-and-cable'],
    ],
    [
      'a short one way round',
      { plusReverse: 'OL | OL | 0.001' },
      {},
      [
        'diode-short fail plusForwardW plusReverseW: diode-short',
        'diode-one-way caution plusForwardW plusReverseW',
        suspect,
      ],
      again,
    ],
    [
      'a short one way round, the other way not read',
      { plusForward: '0.41 | 0.41 | ', plusReverse: 'OL | OL | 0.001' },
      {},
      ['diode-incomplete undecided plusForwardW', 'diode-short fail plusForwardW plusReverseW: diode-short', suspect],
      ['measure-missing', 'keep-power-off', 'repeat-position'],
    ],
    [
      'two shorts of a rail, one of them one way round only',
      { plusForward: '0.001 | 0.41 | 0.41', plusReverse: '0.001 | OL | 0.001' },
      {},
      [
        'diode-short fail plusForwardU plusReverseU plusForwardW plusReverseW: diode-short',
        'diode-one-way caution plusForwardW plusReverseW',
        'diode-more-than-one caution',
        'diode-failed note',
      ],
      ['repeat-position', 'replace-complete-drive', 'test-motor-and-cable'],
    ],
    [
      'three that conduct both ways: leads are more likely than three faults',
      { plusForward: '0.4 | 0.4 | 0.001', plusReverse: '0.4 | 0.4 | 0.001' },
      {},
      [
        'diode-short fail plusForwardW plusReverseW: diode-short',
        'diode-leaky fail plusForwardU plusReverseU plusForwardV plusReverseV: diode-blocking',
        `diode-all-alike caution ${allPlus}`,
        'diode-more-than-one caution',
        suspect,
      ],
      ['exchange-leads', 'keep-power-off', 'repeat-position'],
    ],
    [
      'a bound that may be a short',
      { plusReverse: '<2 V | OL | OL' },
      {},
      ['diode-short-possible undecided plusForwardU plusReverseU: diode-short'],
      ['repeat-more-exactly', 'take-resistances'],
    ],
    [
      'leads exchanged',
      { plusForward: open, plusReverse: alike },
      {},
      [`diode-rows-swapped undecided ${allPlus}`],
      ['exchange-leads', 'take-resistances'],
    ],
    [
      'one that does not block',
      { plusReverse: 'OL | 1.2 | OL' },
      {},
      ['diode-leaky fail plusForwardV plusReverseV: diode-blocking', suspect],
      ['keep-power-off', 'repeat-position'],
    ],
    [
      'one that blocks otherwise than the rest',
      { plusReverse: 'OL | 1.7 | OL' },
      {},
      ['diode-reverse-unclear undecided plusReverseU plusReverseV plusReverseW: diode-blocking bridge-tolerance'],
      ['let-readings-settle', 'take-resistances'],
    ],
    [
      'a bound that proves no blocking beside two that block',
      { plusReverse: '1.70 | 1.72 | >1 V' },
      {},
      ['diode-reverse-unclear undecided plusReverseW: diode-blocking bridge-tolerance'],
      ['let-readings-settle', 'take-resistances'],
    ],
    [
      'one that does not conduct',
      { minusForward: '0.41 | OL | 0.41' },
      {},
      ['diode-forward-open fail minusForwardV', suspect],
      again,
    ],
    [
      'two that do not conduct, and one that was not read',
      { minusForward: 'OL | OL | ' },
      {},
      ['diode-incomplete undecided minusForwardW'],
      ['measure-missing', 'take-resistances'],
    ],
    [
      'none that conducts',
      { minusForward: open },
      {},
      ['diode-forward-all-open undecided minusForwardU minusForwardV minusForwardW'],
      ['hold-tips-together', 'compare-known-good', 'take-resistances'],
    ],
    [
      'one drop apart from the others',
      { plusForward: '0.412 | 0.415 | 0.350' },
      {},
      ['diode-unbalanced fail plusForwardU plusForwardV plusForwardW: diode-balance', suspect],
      ['keep-power-off', 'repeat-position'],
    ],
    [
      'drops apart by no more than the accuracy of the meter',
      { plusForward: '0.412 | 0.415 | 0.370' },
      { instrument: { percent: 1, counts: 2 } },
      ['diode-too-close undecided plusForwardU plusForwardV plusForwardW: diode-balance'],
      ['repeat-more-exactly', 'take-resistances'],
    ],
    [
      'three alike that are unusual for silicon',
      { plusForward: '0.21 | 0.22 | 0.21' },
      {},
      ['diode-drop-unusual caution plusForwardU plusForwardV plusForwardW: diode-forward-typical', 'diode-passed note'],
      ['compare-known-good', 'take-resistances', 'test-insulation-next'],
    ],
    [
      'a figure that no meter shows',
      { plusForward: 'OL | 0.41 | 0.41' },
      { instrument: { percent: Number.NaN } },
      ['figure-impossible undecided instrument.percent'],
      ['read-figure-again'],
    ],
    [
      'a figure that no meter shows beside readings that drift: the danger is kept',
      {},
      { instrument: { percent: Number.NaN }, steadiness: 'drifting' },
      ['figure-impossible undecided instrument.percent', 'diode-drifting stop steadiness'],
      ['read-figure-again', 'wait-and-measure-bus'],
    ],
  ];
  it.each(rows)('%s', (_, own, other, said, next) => {
    const lines = linesOf(own, other);
    expect(lines.said).toEqual(said);
    expect(lines.next).toEqual(next);
  });

  it('a sound stage passes each rail both ways, and says that a leak of some kilohms is not seen', () => {
    expect(linesOf({}).passed).toEqual([
      'diode-balanced pass plusForwardU plusForwardV plusForwardW: diode-balance',
      'diode-blocks pass plusReverseU plusReverseV plusReverseW: diode-blocking',
      'diode-balanced pass minusForwardU minusForwardV minusForwardW: diode-balance',
      'diode-blocks pass minusReverseU minusReverseV minusReverseW: diode-blocking',
    ]);
    const { findings } = assessBridgeDiode(diodeInput());
    expect(found(findings, 'diode-blind-to-leaks').severity).toBe('caution');
  });

  it('a failed stage needs no word about leaks that the test does not see', () => {
    const codes = assessBridgeDiode(diodeInput(minusShort)).findings.map(({ code }) => code);
    expect(codes).not.toContain('diode-blind-to-leaks');
  });

  it('a reading that is missing passes no row', () => {
    const lacking = linesOf({ plusForward: '0.41 | | 0.41', minusReverse: 'OL | OL | ' });
    expect(lacking.passed.map((text) => text.split(' ')[2])).toEqual(['plusReverseU', 'minusForwardU']);
  });

  it('two that do not conduct are both suspect beside one that does', () => {
    expect(linesOf({ minusForward: 'OL | OL | 0.41' }).suspects).toEqual(['minusU', 'minusV']);
  });

  it('two drops apart beside an open third: any of them', () => {
    expect(linesOf({ plusForward: '0.412 | OL | 0.350' }).suspects.sort()).toEqual(['plusU', 'plusV', 'plusW']);
  });
});
