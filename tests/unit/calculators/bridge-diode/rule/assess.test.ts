import { describe, expect, it } from 'vitest';
import { suspectPositions } from '../../../../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessBridgeDiode, type BridgeDiodeInput } from '../../../../../src/calculators/bridge-diode/rule/assess.ts';
import { type DiodeRows, diodeInput } from '../../../../support/diode-cases.ts';
import { typed } from '../../../../support/typed.ts';

const told = (input: BridgeDiodeInput) => {
  const { verdict, findings, next } = assessBridgeDiode(input);
  return {
    verdict,
    codes: findings.map(({ code }) => code),
    suspects: suspectPositions(findings),
    next: next.map(({ code }) => code),
    stops: findings.some(({ severity }) => severity === 'stop'),
  };
};

type Row = [rows: DiodeRows, verdict: string, code: string, suspects: string[], why: string];

describe('twelve readings of a diode test', () => {
  it.each<Row>([
    // Rows that differ from a sound stage, verdict, deciding code, suspects, reason.
    [{}, 'go', 'diode-balanced', [], 'three alike drops, and OL the other way'],
    [{ minusForward: '0.41 | 0.003 | 0.41', minusReverse: 'OL | 0.003 | OL' }, 'no-go', 'diode-short', ['minusV'], ''],
    [{ plusForward: '0.002 | 0.41 | 0.41', plusReverse: '0.002 | OL | OL' }, 'no-go', 'diode-short', ['plusU'], ''],
    [{ plusReverse: 'OL | OL | 0.001' }, 'no-go', 'diode-one-way', ['plusW'], 'a short one way only is doubted'],
    [{ plusReverse: 'OL | 1.2 | OL' }, 'no-go', 'diode-leaky', ['plusV'], 'below 1.5 V where it should block'],
    [
      { plusReverse: 'OL | 1.7 | OL' },
      'undecided',
      'diode-reverse-unclear',
      [],
      'above the limit, but not as the rest',
    ],
    [{ plusReverse: '1.70 | 1.72 | 1.71' }, 'go', 'diode-blocks', [], 'three alike, through resistors of the stage'],
    [{ minusForward: '0.41 | OL | 0.41' }, 'no-go', 'diode-forward-open', ['minusV'], 'one does not conduct'],
    [{ minusForward: 'OL | OL | OL' }, 'undecided', 'diode-forward-all-open', [], 'leads, or another semiconductor'],
    [
      { plusForward: 'OL | OL | OL', plusReverse: '0.41 | 0.41 | 0.41' },
      'undecided',
      'diode-rows-swapped',
      [],
      'the exact mirror of a sound rail',
    ],
    [{ plusForward: '0.412 | 0.415 | 0.350' }, 'no-go', 'diode-unbalanced', ['plusW'], '0.062 V below the next one'],
    [{ plusForward: '0.412 | 0.415 | 0.365' }, 'go', 'diode-balanced', [], '0.05 V, the limit itself'],
    [{ plusForward: '0.21 | 0.22 | 0.21' }, 'go', 'diode-drop-unusual', [], 'agree, but are no silicon drops'],
    [
      { plusForward: '1.9 | 1.9 | 1.9', plusReverse: '1.9 | 1.9 | 1.9' },
      'undecided',
      'diode-drop-unusual',
      [],
      'the same both ways: a resistor reads so',
    ],
    [{ plusForward: '2.2 | 2.2 | 2.2' }, 'undecided', 'diode-drop-unusual', [], 'another semiconductor, or no diode'],
    [
      { plusForward: '1.45 | 1.45 | 1.45', plusReverse: '1.55 | 1.55 | 1.55' },
      'undecided',
      'diode-drop-unusual',
      [],
      'nearly the same both ways',
    ],
    [{ plusForward: '0.41 | | 0.41' }, 'undecided', 'diode-incomplete', [], ''],
    [{ plusForward: '<0.2 | 0.41 | 0.41' }, 'no-go', 'diode-unbalanced', ['plusU'], 'under 0.2 V is far from 0.41 V'],
    [{ plusReverse: '<2 V | OL | OL' }, 'undecided', 'diode-short-possible', [], 'up to 2 V may be a short, too'],
    [
      { plusReverse: '>1 V | OL | OL' },
      'undecided',
      'diode-reverse-unclear',
      [],
      'over-range at 1 V proves no blocking',
    ],
    [
      { plusForward: '0.0 | 0.0 | 0.0', plusReverse: '0.0 | 0.0 | 0.0' },
      'no-go',
      'diode-all-alike',
      ['plusU', 'plusV', 'plusW'],
      'all three: shorted, and doubted',
    ],
  ])('%j: %s by %s, suspects %j (%s)', (rows, verdict, code, suspects) => {
    const found = told(diodeInput(rows));
    expect(found.verdict).toBe(verdict);
    expect(found.codes).toContain(code);
    expect(found.suspects).toEqual(suspects);
  });

  it('a limit that the accuracy of the meter reaches over decides nothing', () => {
    const rows = { plusForward: '0.412 | 0.415 | 0.370' };
    expect(told(diodeInput(rows)).verdict).toBe('go');
    const coarse = told(diodeInput(rows, { instrument: { percent: 1, counts: 2 } }));
    expect([coarse.verdict, coarse.codes.includes('diode-too-close')]).toEqual(['undecided', true]);
    const short = told(diodeInput({ plusReverse: 'OL | OL | 0.098' }, { instrument: { percent: 1, counts: 3 } }));
    expect(short.codes).toContain('diode-short-possible');
  });

  it('exchanged rows stay exchanged rows with a coarse meter: no suspect is made of them', () => {
    const rows = { plusForward: 'OL | OL | OL', plusReverse: '0.41 | 1.49 | 0.46' };
    for (const instrument of [{}, { percent: 5 }]) {
      const { verdict, codes } = told(diodeInput(rows, { instrument }));
      expect([verdict, codes.includes('diode-rows-swapped')]).toEqual(['undecided', true]);
    }
  });

  it('more than one suspect is doubted', () => {
    const { codes } = told(diodeInput({ plusReverse: '0.4 | OL | OL', minusReverse: 'OL | OL | 0.4' }));
    expect(codes).toContain('diode-more-than-one');
  });

  it('says that a leak of some kilohms passes, unless the resistances are there', () => {
    expect(told(diodeInput()).next).toContain('take-resistances');
    const both = told(diodeInput({ resistance: ['480k | 490k | 485k', '46k | 45.8k | 46.1k'] }));
    expect(both.codes).not.toContain('diode-blind-to-leaks');
  });
});

describe('what proves the drive bad', () => {
  type Proof = [rows: DiodeRows, drive: string, why: string];
  const short: DiodeRows = { minusForward: '0.41 | 0.003 | 0.41', minusReverse: 'OL | 0.003 | OL' };

  it.each<Proof>([
    [short, 'convicted', 'a short both ways round, beside two sound positions'],
    [{ plusReverse: 'OL | OL | 0.001' }, 'suspect', 'a short one way only'],
    [{ plusReverse: 'OL | 1.2 | OL' }, 'suspect', 'a leak, or a bus that still charges'],
    [{ minusForward: '0.41 | OL | 0.41' }, 'suspect', 'a poor contact reads so too'],
    [{ plusForward: '0 | 0 | 0', plusReverse: '0 | 0 | 0' }, 'suspect', 'nothing sound beside it'],
    [{}, 'sound', ''],
    [{ plusForward: '0.41 | | 0.41' }, 'open', ''],
  ])('%j: %s (%s)', (rows, drive) => {
    const assessment = assessBridgeDiode(diodeInput(rows));
    const next = assessment.next.map(({ code }) => code);
    expect(assessment.drive).toBe(drive);
    expect(next.includes('replace-complete-drive')).toBe(drive === 'convicted');
    expect(next.includes('keep-power-off')).toBe(drive === 'suspect');
  });

  it('takes the motor leads off, and readings that stand still', () => {
    for (const less of [{ motorLeads: 'not-stated' as const }, { steadiness: 'not-stated' as const }])
      expect(assessBridgeDiode(diodeInput(short, less)).drive).toBe('suspect');
  });
});

describe('resistances beside it', () => {
  const both: DiodeRows = { resistance: ['480k | 490k | 485k', '46k | 45.8k | 46.1k'] };

  it.each([
    [undefined, true],
    ['not-stated', true],
    ['after', true],
    ['first', false],
    ['bus-measured-between', false],
  ] as const)('read %s the diode test: asked to be read first: %s', (resistanceOrder, asked) => {
    const found = told(diodeInput(both, resistanceOrder && { resistanceOrder }));
    expect(found.codes.includes('resistances-after-diodes')).toBe(asked);
    expect(found.next.includes('resistances-first')).toBe(asked);
    expect(found.verdict).toBe('go');
  });
});

describe('a charged bus', () => {
  it.each([
    ['a reading below zero', diodeInput({ plusForward: '-0.2 | 0.41 | 0.41' })],
    ['a reading below zero in the blocking row', diodeInput({ minusReverse: 'OL | -12 V | OL' })],
    ['readings that drift', diodeInput({}, { steadiness: 'drifting' })],
    ['a voltage that is dangerous', diodeInput({}, { busVoltage: typed('320 V', 'voltage') })],
  ])('%s stops everything', (_name, input) => {
    const { verdict, stops, next, codes } = told(input);
    expect([verdict, stops]).toEqual(['undecided', true]);
    expect(next).toContain('wait-and-measure-bus');
    expect(codes.some((code) => code === 'diode-balanced' || code === 'diode-short')).toBe(false);
  });

  it.each([
    ['not measured', { busVoltage: typed('', 'voltage') }, 'bus-not-measured'],
    ['a few volts left', { busVoltage: typed('3 V', 'voltage') }, 'bus-residual-voltage'],
    ['motor leads still on', { motorLeads: 'connected' as const }, 'motor-leads-connected'],
    ['motor leads not stated', { motorLeads: 'not-stated' as const }, 'motor-leads-not-stated'],
    ['not said whether they stand still', { steadiness: 'not-stated' as const }, 'diode-steadiness-not-stated'],
  ])('%s is undecided', (_name, other, code) => {
    const { verdict, codes } = told(diodeInput({}, other));
    expect(verdict).toBe('undecided');
    expect(codes).toContain(code);
  });
});

const good: [string, string] = ['480k | 490k | 485k', '46k | 45.8k | 46.1k'];

type Beside = [name: string, rows: DiodeRows, verdict: string, codes: string[], suspects: string[]];

describe('beside the resistance readings', () => {
  it.each<Beside>([
    ['both pass', { resistance: good }, 'go', ['tests-agree'], []],
    [
      'both name the same short',
      {
        minusForward: '0.41 | 0.003 | 0.41',
        minusReverse: 'OL | 0.003 | OL',
        resistance: ['480k | 490k | 485k', '46k | 3.8 Ω | 46.1k'],
      },
      'no-go',
      ['tests-agree'],
      ['minusV'],
    ],
    [
      'a short by resistance, a sound diode test',
      { resistance: ['480k | 490k | 485k', '46k | 3.8 Ω | 46.1k'] },
      'undecided',
      ['tests-contradict'],
      [],
    ],
    [
      'a short by diode test, sound resistances',
      { minusForward: '0.41 | 0.003 | 0.41', minusReverse: 'OL | 0.003 | OL', resistance: good },
      'undecided',
      ['tests-contradict'],
      [],
    ],
    [
      'a strong leak by diode test, sound resistances',
      { minusReverse: 'OL | 1.1 | OL', resistance: good },
      'undecided',
      ['tests-contradict'],
      [],
    ],
    [
      'a leak that the diode test passes',
      { resistance: ['480k | 490k | 485k', '46k | 9.4k | 46.1k'] },
      'no-go',
      ['resistance-finds-leak'],
      ['minusV'],
    ],
    [
      'an open diode, which the resistances cannot see',
      { minusForward: '0.41 | OL | 0.41', resistance: good },
      'no-go',
      ['resistance-sees-less'],
      ['minusV'],
    ],
    [
      'resistances that are not complete',
      { resistance: ['480k | 490k | 485k', '46k | | 46.1k'] },
      'undecided',
      ['resistance-undecided'],
      [],
    ],
    [
      'a short without a diode test',
      { minusForward: '0.41 | | 0.41', resistance: ['480k | 490k | 485k', '46k | 3.8 Ω | 46.1k'] },
      'no-go',
      ['resistance-fails'],
      ['minusV'],
    ],
    [
      'six open resistances, with diodes that conduct',
      { resistance: ['>72M | >72M | >72M', '>72M | >72M | >72M'] },
      'go',
      ['tests-agree'],
      [],
    ],
  ])('%s', (_name, rows, verdict, codes, suspects) => {
    const found = told(diodeInput(rows));
    expect(found.verdict).toBe(verdict);
    for (const code of codes) expect(found.codes).toContain(code);
    expect(found.suspects).toEqual(suspects);
  });

  it('a contradiction names the measurement that decides', () => {
    expect(told(diodeInput({ resistance: ['480k | 490k | 485k', '46k | 3.8 Ω | 46.1k'] })).next).toEqual([
      'repeat-both-tests',
      'resistances-first',
    ]);
  });

  it('a contradiction at one position does not lift a proven short at another', () => {
    const found = told(
      diodeInput({
        plusForward: '0.002 | 0.41 | 0.41',
        plusReverse: '0.002 | OL | OL',
        resistance: ['2.1 Ω | 490k | 485k', '46k | 3.8 Ω | 46.1k'],
      }),
    );
    expect([found.verdict, found.suspects]).toEqual(['no-go', ['plusU']]);
    expect(found.codes).toContain('tests-contradict');
  });
});
