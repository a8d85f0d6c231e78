import { describe, expect, it } from 'vitest';
import { brakeCores, judgeIsolation, less } from '../../../../../src/calculators/brake/rule/cable.ts';
import { metres, missing, ohms, overOhms, type Reading, underOhms } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { assess, type Change, sound } from './sound.ts';

// Cores: IEC 60228, recalled. The allowances are judgement or common practice.

const { most = 0, beyond = 0 } = brakeCores(sound.cable) ?? {};
const unknown = { metres: missing };
/** A coil of 100 Ω, and what is read of it through the cores. */
const of100 = (atDrive: Reading): Change => ({
  ratedWatts: missing,
  ratedOhms: ohms(100),
  sourceVolts: missing,
  atMotor: ohms(100),
  atDrive,
});
/** A coil of nothing, so that the cores alone are read. */
const ofNothing = (atDrive: Reading): Change => ({ ...of100(atDrive), atMotor: ohms(0) });
const above = (figure: number) => ohms(figure * (1 + 1e-9));

describe('what is read through the cores beside the coil', () => {
  const rows: [what: string, Change, code: string][] = [
    ['10 % less', of100(ohms(90)), 'brake-cores-below'],
    ['more than that', of100(ohms(89.9)), 'brake-cores-touch'],
    ['more, through a cable not known', { ...of100(ohms(89.9)), cable: unknown }, 'brake-cores-touch'],
    ['5 % less', of100(ohms(95)), 'brake-cores-fit'],
    ['more than that', of100(ohms(94.9)), 'brake-cores-below'],
    ['more, through a cable not known', { ...of100(ohms(94.9)), cable: unknown }, 'brake-cores-below'],
    ['5 % less, through a cable not known', { ...of100(ohms(95)), cable: unknown }, 'brake-cable-not-stated'],
    ['a coarse digit of the coil', { ...of100(ohms(86)), atMotor: ohms(100, 10) }, 'brake-cores-below'],
    ['a coarse digit through the cores', of100(ohms(88, 10)), 'brake-cores-below'],
    ['what the cores explain', ofNothing(ohms(most)), 'brake-cores-fit'],
    ['more', ofNothing(above(most)), 'brake-cores-too-close'],
    ['their end', ofNothing(ohms(beyond)), 'brake-cores-too-close'],
    ['more', ofNothing(above(beyond)), 'brake-cores-high'],
    ['5 % more', of100(ohms(105)), 'brake-cores-too-close'],
    ['more than that', of100(ohms(105.1)), 'brake-cores-high'],
    ['more, by a coarse digit', of100(ohms(105.1, 1)), 'brake-cores-too-close'],
    ['beyond a meter up to 110 Ω', { ...of100(ohms(120)), instrument: { upperLimit: 110 } }, 'brake-cores-too-close'],
    // Twice the coil and the end of the cores, 202.975 Ω.
    ['over 202 Ω', of100(overOhms(202)), 'brake-coil-over-range'],
    ['over 203 Ω', of100(overOhms(203)), 'brake-core-open'],
    ['over 200 Ω, through a cable not known', { ...of100(overOhms(200)), cable: unknown }, 'brake-coil-over-range'],
    ['over 201 Ω, through a cable not known', { ...of100(overOhms(201)), cable: unknown }, 'brake-core-open'],
    ['OL of a meter up to 300 Ω', { ...of100(overOhms()), instrument: { upperLimit: 300 } }, 'brake-core-open'],
    ['OL of a meter up to 120 Ω', { ...of100(overOhms()), instrument: { upperLimit: 120 } }, 'brake-coil-over-range'],
    ['5 % less, by its last digit', of100(ohms(95, 0.1)), 'brake-cores-too-close'],
    [
      '5 % less, by the last digit of the coil',
      { ...of100(ohms(95)), atMotor: ohms(100, 0.1) },
      'brake-cores-too-close',
    ],
    ['by a meter of 1 %', { ...of100(ohms(94.5)), instrument: { percent: 1 } }, 'brake-cores-too-close'],
  ];
  it.each(rows)('%s: %j', (_, change, code) => {
    const said = assess(change).findings.filter(
      ({ readings }) => readings[0] === 'atDrive' || readings[0] === 'metres',
    );
    expect(said.map((one) => one.code).filter((one) => one !== 'brake-drop-expected')).toEqual([code]);
  });

  it('worse evidence of a reading 5 % lower makes no go of it', () => {
    const lower = of100(ohms(94.5));
    expect(assess(lower).verdict).toBe('undecided');
    expect(assess({ ...lower, instrument: { percent: 1 } }).verdict).toBe('undecided');
    expect(assess({ ...lower, atMotor: ohms(100, 10) }).verdict).toBe('undecided');
    expect(assess(of100(ohms(94.5, 2))).verdict).toBe('undecided');
    // It may be of two cores that touch.
    expect(assess(of100(underOhms(100))).verdict).toBe('undecided');
  });

  it('a bound at the motor is nothing to compare with', () => {
    for (const atMotor of [underOhms(50), overOhms()]) {
      const { findings } = assess({ atMotor });
      expect(findings.filter(({ readings }) => readings.includes('atDrive'))).toEqual([]);
    }
  });

  it('cores have no ohms without length and a listed cross-section', () => {
    expect(brakeCores({ metres: metres(20) })).toBeUndefined();
    expect(brakeCores({ metres: missing, squareMillimetres: 1 })).toBeUndefined();
    expect(brakeCores({ metres: metres(20), squareMillimetres: 1.1 })).toBeUndefined();
    expect(brakeCores(sound.cable)).toEqual({
      table: expect.closeTo(0.78, 9),
      most: expect.closeTo(1.275, 9),
      beyond: expect.closeTo(2.975, 9),
    });
  });

  it('one interval less another never ends below zero', () => {
    expect(less({ lo: 5, hi: 7 }, { lo: 1, hi: 2 })).toEqual({ lo: 3, hi: 6 });
    expect(less({ lo: 5, hi: 7 }, { lo: 1, hi: 6 })).toEqual({ lo: 0, hi: 6 });
    expect(less({ lo: 1, hi: 2 }, { lo: 5, hi: 7 })).toEqual({ lo: 0, hi: 0 });
  });
});

describe.each(['coresApart', 'toPhases', 'toPe'] as const)('%s', (field) => {
  const free = 'brake-cores-free pass: idle-core-free';
  const rows: [what: string, Reading, line: string][] = [
    ['a megohm', ohms(1e6), free],
    ['less', ohms(999_999), `brake-core-path fail ${field}: idle-core-free`],
    ['by a coarse digit', ohms(1e6, 1e5), `brake-core-unclear undecided ${field}: idle-core-free`],
    ['over a megohm', overOhms(1e6), free],
    ['over less', overOhms(999_999), `brake-core-unclear undecided ${field}: idle-core-free`],
    ['under a megohm', underOhms(1e6), `brake-core-unclear undecided ${field}: idle-core-free`],
    ['under less', underOhms(999_999), `brake-core-path fail ${field}: idle-core-free`],
    ['not measured', missing, `brake-cores-not-measured undecided ${field}: idle-core-free`],
  ];
  it.each(rows)('%s', (_, reading, line) => {
    expect(judgeIsolation({ ...sound, [field]: reading }).map(lineWithLimits)).toEqual([line]);
  });

  it('the error of the meter takes a decision away', () => {
    const judged = judgeIsolation({ ...sound, [field]: ohms(1.05e6), instrument: { percent: 9 } });
    expect(judged.map(({ code }) => code)).toEqual(['brake-core-unclear']);
  });
});
