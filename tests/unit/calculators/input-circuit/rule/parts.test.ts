import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, type Reading, underOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change, linesWith, ol, pairLimits, three } from './sound.ts';

// Common practice, no source: what fuses, a bus and a precharge resistor show a multimeter.

const zero = volts(0.002);
const good = ohms(0.2);
const bus = 'linkConducting linkBlocking';
const precharge = 'prechargeOhms prechargePlate';
const marks = 'precharge-tolerance precharge-off-plate tips-together';
const bound: Reading = { kind: 'over', unit: 'V', atLeast: 1 };

describe('what is found part by part, which readings and limits it names, and what comes next', () => {
  type Row = [what: string, Change, Parameters<typeof linesWith>[0], next: string[]];
  const link = (line: string, limits = pairLimits) => ({ link: [`${line} ${bus}: ${limits}`] });
  const noClimb = { climb: [] };
  const rows: Row[] = [
    ['sound', {}, {}, ['measure-lines']],
    [
      'a fuse open',
      { fuses: three(good, overOhms(), good) },
      { fuses: ['fuse-open fail fuseL2: tips-together'] },
      ['fuses-last', 'measure-lines', 'look-before-drive'],
    ],
    [
      'fuses open, unclear and not measured',
      { fuses: three(overOhms(), ohms(3), missing) },
      {
        fuses: [
          'fuse-open fail fuseL1: tips-together',
          'fuse-unclear undecided fuseL2: tips-together',
          'fuses-missing undecided fuseL3: tips-together',
        ],
      },
      ['fuses-last', 'measure-fuses', 'measure-lines', 'look-before-drive'],
    ],
    [
      'a fuse unclear',
      { fuses: three(good, good, ohms(3)) },
      { fuses: ['fuse-unclear undecided fuseL3: tips-together'] },
      ['measure-fuses', 'measure-lines'],
    ],
    [
      'fuses not measured',
      { fuses: three(missing) },
      { fuses: ['fuses-missing undecided fuseL1 fuseL2 fuseL3: tips-together'] },
      ['measure-fuses', 'measure-lines'],
    ],
    [
      'bus short',
      { linkConducting: zero, linkBlocking: zero },
      { ...link('link-short fail'), ...noClimb },
      ['measure-lines', 'read-twice'],
    ],
    [
      'bus short one way',
      { linkBlocking: zero },
      { ...link('link-short fail'), ...noClimb },
      ['measure-lines', 'read-twice'],
    ],
    [
      'bus leaks',
      { linkBlocking: volts(0.9) },
      { ...link('link-leaky fail'), ...noClimb },
      ['measure-lines', 'read-twice'],
    ],
    [
      'bus open',
      { linkConducting: ol },
      { ...link('link-open undecided'), ...noClimb },
      ['measure-lines', 'compare-input'],
    ],
    [
      'bus exchanged',
      { linkConducting: ol, linkBlocking: volts(0.85) },
      { ...link('link-exchanged undecided'), ...noClimb },
      ['measure-lines', 'measure-link'],
    ],
    [
      'bus unclear',
      { linkBlocking: bound },
      { ...link('link-unclear undecided'), ...noClimb },
      ['measure-lines', 'measure-link'],
    ],
    [
      'bus not measured',
      { linkBlocking: missing },
      { ...link('link-missing undecided'), ...noClimb },
      ['measure-lines', 'measure-link'],
    ],
    [
      'bus conducts like one diode',
      { linkConducting: volts(0.46, 0.001) },
      link('link-one-drop undecided', `${pairLimits} diode-balance`),
      ['measure-lines', 'read-stages', 'compare-input'],
    ],
    [
      'bus open at once',
      { climb: 'at-once' },
      { climb: ['link-no-climb undecided climb'] },
      ['measure-lines', 'compare-input'],
    ],
    [
      'climb not stated',
      { climb: 'not-stated' },
      { climb: ['link-climb-not-stated undecided climb'] },
      ['measure-lines', 'measure-link'],
    ],
    ...(['none', 'inside'] as const).map(
      (where): Row => [
        `precharge: ${where}`,
        { precharge: where },
        { precharge: [`precharge-${where} undecided precharge`] },
        ['measure-lines', 'ask-about-precharge'],
      ],
    ),
    ...[
      { precharge: 'not-stated' as const },
      { prechargePlate: missing },
      { prechargePlate: ohms(0) },
      { prechargeOhms: missing },
    ].map(
      (change, index): Row => [
        `precharge not known, ${index}`,
        change,
        { precharge: [`precharge-missing undecided ${precharge}`] },
        ['measure-lines', 'ask-about-precharge'],
      ],
    ),
    [
      'precharge open',
      { prechargeOhms: overOhms() },
      { precharge: [`precharge-open fail ${precharge}: ${marks} open-on-any-range`] },
      ['measure-lines', 'read-twice'],
    ],
    [
      'precharge over a low range',
      { prechargeOhms: overOhms(20) },
      { precharge: [`precharge-over-range undecided ${precharge}`] },
      ['measure-lines', 'note-precharge-range'],
    ],
    [
      'precharge bypassed',
      { prechargeOhms: ohms(0.3) },
      { precharge: [`precharge-bypassed fail ${precharge}: ${marks}`] },
      ['measure-lines', 'read-twice'],
    ],
    [
      'precharge off',
      { prechargeOhms: ohms(60) },
      { precharge: [`precharge-off fail ${precharge}: ${marks}`] },
      ['measure-lines', 'read-twice'],
    ],
    [
      'precharge close',
      { prechargeOhms: ohms(52) },
      { precharge: [`precharge-too-close undecided ${precharge}: ${marks}`] },
      ['measure-lines', 'ask-about-precharge'],
    ],
  ];
  it.each(rows)('%s', (_, change, instead, next) => {
    const assessment = assess(change);
    expect(assessment.findings.map(lineWithLimits)).toEqual(linesWith(instead));
    expect(assessment.next.map(({ code }) => code)).toEqual([...next, 'measure-bus-again']);
  });
});

describe('figures of the sentences', () => {
  const rows: [what: string, Change, code: string, figures: object][] = [
    ['fuses open', { fuses: three(overOhms(), good, overOhms()) }, 'fuse-open', { lines: ['L1', 'L3'] }],
    ['fuse unclear', { fuses: three(good, ohms(3), good) }, 'fuse-unclear', { lines: ['L2'], mostOhms: 2 }],
    ['fuse missing', { fuses: three(missing, good, missing) }, 'fuses-missing', { lines: ['L1', 'L3'] }],
    ['bus short', { linkConducting: zero, linkBlocking: zero }, 'link-short', { bothWays: true }],
    ['bus short one way', { linkConducting: zero }, 'link-short', { bothWays: false }],
    ['precharge', {}, 'precharge-fits', { ohms: expect.closeTo(47.8, 9), plateOhms: 47, tolerancePercent: 10 }],
    ['precharge low', { prechargeOhms: ohms(30, 2) }, 'precharge-off', { ohms: 30, plateOhms: 47 }],
    ['precharge under 30 Ω', { prechargeOhms: underOhms(30) }, 'precharge-off', { ohms: 15, plateOhms: 47 }],
    ['precharge high', { prechargeOhms: ohms(60, 2) }, 'precharge-off', { ohms: 60, plateOhms: 47 }],
    ['precharge close', { prechargeOhms: ohms(52) }, 'precharge-too-close', { plateOhms: 47, tolerancePercent: 10 }],
  ];
  it.each(rows)('%s', (_, change, code, figures) => {
    expect(assess(change).findings.find((one) => one.code === code)).toMatchObject(figures);
  });
});
