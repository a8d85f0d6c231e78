import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, volts, watts } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change, cores, percent, usual } from './sound.ts';

// Ohms of a coil: U²/P. Cores: IEC 60228. The tolerances are common practice or judgement.

describe('what is found of cores, voltage and release, and what comes next', () => {
  const rows: [what: string, Change, lines: string[], next: string[]][] = [
    [
      'cable not stated',
      { cable: { metres: missing } },
      ['brake-cable-not-stated undecided metres squareMillimetres'],
      ['state-brake-cable'],
    ],
    [
      'core open',
      { atDrive: overOhms() },
      ['brake-core-open fail atDrive atMotor: open-on-any-range'],
      ['separate-cable'],
    ],
    [
      'a low range at the drive',
      { atDrive: overOhms(90) },
      ['brake-coil-over-range undecided atDrive'],
      ['note-range'],
    ],
    [
      'cores touch',
      { atDrive: ohms(30) },
      ['brake-cores-touch fail atDrive atMotor: brake-coil-tolerance'],
      ['separate-cable'],
    ],
    [
      'cores high',
      { atDrive: ohms(60) },
      [`brake-cores-high fail atDrive atMotor: ${cores} winding-again-agreement`],
      ['separate-cable'],
    ],
    [
      'cores below',
      { atDrive: ohms(44.1) },
      ['brake-cores-below undecided atDrive atMotor: winding-again-agreement brake-coil-tolerance'],
      ['repeat-coil-with-care', 'separate-cable'],
    ],
    [
      'cores perhaps below',
      { atDrive: ohms(45.5, 1) },
      [`brake-cores-too-close undecided atDrive atMotor: ${cores} winding-again-agreement`],
      ['separate-cable'],
    ],
    [
      'cores close',
      { atDrive: ohms(49.6, 0.1) },
      [`brake-cores-too-close undecided atDrive atMotor: ${cores}`],
      ['separate-cable'],
    ],
    [
      'a path',
      { toPe: ohms(1), coresApart: ohms(1) },
      ['brake-core-path fail coresApart toPe: idle-core-free'],
      ['separate-cable'],
    ],
    [
      'a path, one not clear, one not measured',
      { toPe: ohms(1), toPhases: overOhms(), coresApart: missing },
      [
        'brake-core-path fail toPe: idle-core-free',
        'brake-core-unclear undecided toPhases: idle-core-free',
        'brake-cores-not-measured undecided coresApart: idle-core-free',
      ],
      ['separate-cable', 'note-range', 'measure-brake-cores'],
    ],
    [
      'no voltage',
      { plugVolts: missing, sourceVolts: missing },
      ['brake-supply-missing undecided plugVolts'],
      ['measure-supply'],
    ],
    [
      'low',
      { plugVolts: volts(17), sourceVolts: missing },
      ['brake-supply-low fail plugVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      ['find-feed-fault'],
    ],
    [
      'high',
      { plugVolts: volts(31), sourceVolts: missing },
      ['brake-supply-high fail plugVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      ['find-feed-fault'],
    ],
    [
      'by the manual',
      { supplyTolerance: percent(5) },
      ['brake-supply-fits pass plugVolts ratedVolts: brake-supply-off'],
      [],
    ],
    [
      'close',
      { plugVolts: volts(20), sourceVolts: missing },
      ['brake-supply-too-close undecided plugVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      ['ask-brake-manual'],
    ],
    [
      'at the source',
      { plugVolts: missing },
      ['brake-supply-fits pass sourceVolts ratedVolts: brake-supply-tolerance brake-supply-off'],
      [],
    ],
    [
      'above its source',
      { plugVolts: volts(26), sourceVolts: volts(23) },
      ['brake-drop-contradicts undecided sourceVolts plugVolts: brake-supply-tolerance'],
      ['measure-supply'],
    ],
    [
      'lost on the way',
      { plugVolts: volts(21.5), sourceVolts: volts(24.1), supplyTolerance: percent(20) },
      [
        'brake-supply-fits pass plugVolts ratedVolts: brake-supply-off',
        `brake-drop-high fail sourceVolts plugVolts: ${cores} voltage-twice`,
      ],
      ['find-drop'],
    ],
    [
      'perhaps lost on the way',
      { plugVolts: volts(21.7) },
      [`brake-drop-unclear undecided sourceVolts plugVolts: ${cores} voltage-twice`],
      ['measure-supply'],
    ],
    [
      'drop of cores that nobody knows',
      { atDrive: missing, cable: { metres: missing }, sourceVolts: volts(25.8) },
      [],
      [],
    ],
    [
      'source only, cores high',
      { plugVolts: missing, atDrive: ohms(60) },
      [
        `brake-cores-high fail atDrive atMotor: ${cores} winding-again-agreement`,
        'brake-supply-missing undecided plugVolts',
      ],
      ['separate-cable', 'measure-supply'],
    ],
    ['not tried', { release: 'not-tried' }, ['brake-release-not-tried undecided release'], ['listen-to-release']],
    ['drags', { release: 'drags' }, ['brake-drags fail release'], ['have-brake-tested']],
    ['stays shut', { release: 'shut' }, ['brake-stays-shut fail release'], ['have-brake-tested']],
    [
      'mains',
      { ratedVolts: volts(50), ratedWatts: watts(52.1), plugVolts: volts(50), sourceVolts: missing },
      ['brake-not-extra-low caution ratedVolts: touch-voltage'],
      [],
    ],
    [
      'extra-low',
      { ratedVolts: volts(49.9), ratedWatts: watts(51.9), plugVolts: volts(50), sourceVolts: missing },
      [],
      [],
    ],
  ];
  it.each(rows)('%s', (_, change, lines, next) => {
    const assessment = assess(change);
    expect(assessment.findings.map(lineWithLimits).filter((one) => !usual.includes(one))).toEqual(lines);
    expect(assessment.next.map(({ code }) => code)).toEqual(next);
  });
});
