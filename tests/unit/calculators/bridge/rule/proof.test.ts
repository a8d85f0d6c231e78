import { describe, expect, it } from 'vitest';
import { assessBridge, type BridgeInput } from '../../../../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../../../../src/calculators/bridge/rule/suspect-positions.ts';
import { found } from '../../../../support/found.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

// Source: the reasoning of each row, worked by hand from Kirchhoff's laws; common practice, no source.

interface Row {
  plus?: string;
  minus?: string;
  again?: string;
  /** U of both rails, read again. */
  plusAgain?: string;
  minusAgain?: string;
  exchanged?: string;
  bus?: string;
  other?: Partial<BridgeInput>;
}

const input = (row: Row): BridgeInput => ({
  busVoltage: typed('0.02 V', 'voltage'),
  motorLeads: 'off',
  dcPlus: typedPhases(row.plus ?? '450k | 455k | 460k'),
  dcMinus: typedPhases(row.minus ?? '45k | 45.5k | 46k'),
  alsoOnBus: 'nothing',
  worstAgain: typed(row.again ?? ''),
  plusAgain: typed(row.plusAgain ?? ''),
  minusAgain: typed(row.minusAgain ?? ''),
  minusExchanged: typed(row.exchanged ?? ''),
  dcBus: typed(row.bus ?? ''),
  ...row.other,
});
const told = (row: Row) => {
  const { verdict, drive, findings, next } = assessBridge(input(row));
  return { verdict, drive, codes: findings.map(({ code }) => code), next: next.map(({ code }) => code) };
};

type Case = [row: Row, verdict: string, drive: string, why: string];

describe('what proves the drive bad', () => {
  it.each<Case>([
    [{ minus: '45k | 0.3 Ω | 46k', again: '0.4 Ω' }, 'no-go', 'convicted', 'a short at one of three, read twice'],
    [{ minus: '0.3 Ω | 45k | 46k', minusAgain: '0.3 Ω' }, 'no-go', 'convicted', 'the first terminal, read again last'],
    [{ minus: '500 Ω | 45k | 46k', minusAgain: '510 Ω' }, 'no-go', 'convicted', 'it would have climbed by then'],
    [
      { minus: '45k | 9k | 46k', again: '9.1k', minusAgain: '45k' },
      'no-go',
      'convicted',
      'a leak that no measuring circuit explains',
    ],
    [{ plus: '450k | 455k | 30k', again: '29k', plusAgain: '450k' }, 'no-go', 'convicted', '30 kΩ, the limit itself'],
    [{ minus: '0.3 Ω | 0.2 Ω | 0.3 Ω', exchanged: '0.3 Ω' }, 'no-go', 'convicted', 'metal both ways at U'],
    [{ minus: '458 Ω | 0.3 Ω | 460 Ω', again: '0.3 Ω' }, 'no-go', 'convicted', 'metal beside diodes that conduct'],
    [
      { minus: '458 Ω | 457 Ω | 456 Ω', exchanged: '460 Ω', bus: '470k' },
      'no-go',
      'convicted',
      'low both ways, and not through the bus',
    ],
    [
      { minus: '39.2k | 44.8k | 44.1k', minusAgain: '39.3k', other: { sister: 'differs' } },
      'no-go',
      'convicted',
      'odd twice, and a sound sister reads otherwise',
    ],
  ])('%j: %s, %s (%s)', (row, verdict, drive) => {
    expect(told(row)).toMatchObject({ verdict, drive });
    expect(told(row).codes).toContain('bridge-failed');
    expect(told(row).next).toEqual(expect.arrayContaining(['replace-complete-drive', 'test-motor-and-cable']));
  });
});

type Lacking = [row: Row, lacking: string[], why: string];

describe('what makes it suspect, and what the proof still takes', () => {
  it.each<Lacking>([
    [{ minus: '45k | 0.3 Ω | 46k' }, ['second-reading'], 'read once'],
    [{ minus: '45k | 9k | 46k', minusAgain: '45k' }, ['second-reading'], 'read once'],
    [{ minus: '45k | 9k | 46k', again: '9k' }, ['steady-first'], 'U may still have moved'],
    [
      { minus: '45k | 9k | 46k', again: '22k', minusAgain: '45k' },
      ['second-reading'],
      'twice as much the second time: something moves',
    ],
    [{ minus: '45k | 0.3 Ω | 46k', again: '1.2k' }, ['second-reading'], 'no short the second time, but as low'],
    [
      { minus: '45k | 0.3 Ω | 46k', again: '0.3 Ω', other: { alsoOnBus: 'something' } },
      ['nothing-else-on-bus'],
      'the short may be in what hangs there',
    ],
    [
      { minus: '45k | 0.3 Ω | 46k', again: '0.3 Ω', other: { alsoOnBus: 'not-stated' } },
      ['nothing-else-on-bus'],
      'what is absent counts as not known',
    ],
    [
      { minus: '45k | 0.3 Ω | 46k', again: '0.3 Ω', other: { motorLeads: 'not-stated' } },
      ['motor-leads-off'],
      'the motor may be on',
    ],
    [
      { minus: '45k | 0.3 Ω | 46k', again: '0.3 Ω', other: { sister: 'alike' } },
      ['unlike-sister'],
      'a sound drive shows no short',
    ],
    [{ plus: '450k | OL | 455k', again: 'OL' }, ['low-reading'], 'a switch can’t make a reading high'],
    [{ plus: 'OL | 450k | OL', again: '450k' }, ['sound-sister'], 'perhaps the only terminal with a resistor'],
    [{ plus: '450k | 40k | 455k', again: '40k' }, ['sound-sister'], 'above what only a leak explains'],
    [
      { plus: '450k | 455k | 200k', plusAgain: '450k', other: { sister: 'differs' } },
      ['second-reading'],
      'a sister that differs, but one reading',
    ],
    [
      { plus: '450k | 200k | 90k', again: '90k', plusAgain: '451k', other: { sister: 'differs' } },
      ['row-that-stands'],
      'no two agree, although U stands: perhaps read too soon',
    ],
    [
      { plus: '450k | 200k | 20k', again: '20k', plusAgain: '451k', other: { sister: 'differs' } },
      ['row-that-stands'],
      'one of them as low as a leak',
    ],
    [
      { plus: '450k | 200k | 90k', again: '90k', plusAgain: '451k' },
      ['row-that-stands'],
      'before a sister is looked for',
    ],
    [
      { plus: '450k | OL | 455k', again: 'OL', plusAgain: '450k', other: { sister: 'differs' } },
      ['low-reading'],
      'whatever the sister shows',
    ],
    [{ minus: '458 Ω | 457 Ω | 456 Ω', exchanged: '460 Ω' }, ['second-reading'], 'the bus may conduct'],
    [{ minus: '45k | 0.3 Ω | 46k', again: '45.4k' }, ['second-reading'], 'one of the two was a slip'],
    [{ bus: '3 Ω' }, ['second-reading'], 'a short across the bus, by one reading'],
  ])('%j lacks %j (%s)', (row, lacking) => {
    const assessment = assessBridge(input(row));
    expect([assessment.verdict, assessment.drive]).toEqual(['no-go', 'suspect']);
    expect(found(assessment.findings, 'bridge-suspect').lacking).toEqual(lacking);
    expect(assessment.next.map(({ code }) => code)).toContain('keep-power-off');
    expect(assessment.next.map(({ code }) => code)).not.toContain('replace-complete-drive');
  });
});

type Open = [row: Row, code: string, why: string];

describe('what stays undecided', () => {
  it.each<Open>([
    [{ minus: '39.2k | 44.8k | 44.1k', minusAgain: '39.3k' }, 'rail-uneven', 'no sister was measured'],
    [{ minus: '44.8k | 39.2k | 44.1k', other: { sister: 'alike' } }, 'rail-uneven', 'the same as the sister, but once'],
    [{ plus: '450k | OL | 455k', other: { sister: 'alike' } }, 'rail-uneven', 'the same as the sister, but once'],
    [{ plus: '450k | OL | 455k', again: 'OL', other: { sister: 'alike' } }, 'rail-uneven', 'U may still have moved'],
    [{ minus: '44.8k | 39.2k | 44.1k', again: '44k' }, 'again-contradicts', 'one of the two was a slip'],
    [
      { minus: '44.8k | 39.2k | 44.1k', again: '4.8 Ω', other: { sister: 'alike' } },
      'again-contradicts',
      'a short that was none at first',
    ],
    [
      { plus: '450k | OL | 455k', again: 'OL', plusAgain: '450k', other: { sister: 'alike' } },
      'rail-uneven',
      'the range of the over-range is not noted',
    ],
    [{ again: '<1 Ω' }, 'again-does-not-fit', 'below the range: perhaps a short'],
    [{ again: '0.3 Ω' }, 'again-does-not-fit', 'a short that belongs nowhere'],
    [{ again: '120k' }, 'again-does-not-fit', 'fits neither rail'],
    [{ other: { sister: 'differs' } }, 'sister-differs', 'balanced, but otherwise than a sound drive'],
    [{ bus: '500 Ω' }, 'bus-low', 'diodes, a capacitor or a short'],
    [{ minus: '458 Ω | 457 Ω | 456 Ω', other: { sister: 'differs' } }, 'rail-all-short', 'three diodes, perhaps'],
  ])('%j: %s (%s)', (row, code) => {
    expect(told(row)).toMatchObject({ verdict: 'undecided', drive: 'open' });
    expect(told(row).codes).toContain(code);
  });
});

describe('what is sound all the same', () => {
  it.each<Open>([
    [
      { minus: '44.8k | 39.2k | 44.1k', again: '39.3k', minusAgain: '44.8k', other: { sister: 'alike' } },
      'rail-as-sister',
      'by its model',
    ],
    [
      { minus: '39.2k | 44.8k | 44.1k', minusAgain: '39.3k', other: { sister: 'alike' } },
      'rail-as-sister',
      'by its model',
    ],
    [
      { plus: '>20M | 450k | >20M', again: '452k', plusAgain: '>20M', other: { sister: 'alike' } },
      'rail-as-sister',
      'by its model',
    ],
    [
      { plus: '450k | >20M | 455k', again: '>20M', plusAgain: '450k', other: { sister: 'alike' } },
      'rail-as-sister',
      'by its model',
    ],
    [{ minus: '4.5k | 4.6k | 4.7k', other: { sister: 'alike' } }, 'rail-lower-than-usual', 'by its model'],
    [{ plus: '54k | 180k | 185k', plusAgain: '187k' }, 'rail-first-replaced', 'the capacitor is charged'],
    [{ again: '452k' }, 'rail-balanced', 'one of the six, read once more'],
    [{ plus: 'OL | OL | OL', again: 'OL' }, 'rail-open', 'one of the six, read once more'],
    [{ bus: '470k' }, 'bus-not-shorted', ''],
    [{ bus: 'OL' }, 'bus-not-shorted', 'an over-range is no short'],
  ])('%j: %s (%s)', (row, code) => {
    expect(told(row)).toMatchObject({ verdict: 'go', drive: 'sound' });
    expect(told(row).codes).toContain(code);
  });

  it('but never a short or a leak, whatever the sister shows', () => {
    for (const minus of ['45k | 0.3 Ω | 46k', '45k | 9k | 46k']) {
      const row = { minus, again: minus.split(' | ')[1] ?? '', other: { sister: 'alike' as const } };
      expect(told(row)).toMatchObject({ verdict: 'no-go', drive: 'suspect' });
    }
  });
});

describe('a second reading', () => {
  it('belongs to the lowest short, else to the lowest odd reading', () => {
    const two = { plus: '450k | 455k | 800 Ω', minus: '45k | 0.3 Ω | 46k' };
    const contradicted = assessBridge(input({ ...two, again: '45k' }));
    expect(found(contradicted.findings, 'again-contradicts').position).toBe('minusV');
    expect(contradicted.verdict).toBe('no-go');
    expect(suspectPositions(contradicted.findings)).toEqual(['plusW', 'minusV']);
    expect(contradicted.drive).toBe('suspect');
  });

  it('does not prove another position than its own', () => {
    const both = { plus: '450k | 455k | 9k', minus: '45k | 46k | 8k', minusAgain: '45k' };
    expect(told({ ...both, again: '8.1k' }).drive).toBe('convicted');
    expect(
      told({ plus: 'OL | 450k | OL', minus: '45k | 44k | 38k', again: '38.1k', other: { sister: 'alike' } }),
    ).toMatchObject({
      verdict: 'undecided',
    });
  });
});
