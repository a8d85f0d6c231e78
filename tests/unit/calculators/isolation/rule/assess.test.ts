import { describe, expect, it } from 'vitest';
import { assessIsolation } from '../../../../../src/calculators/isolation/rule/assess.ts';
import type { IsolationInput, StageReadings } from '../../../../../src/calculators/isolation/rule/input.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

const stage = (phases: string, PE: string): StageReadings => ({ ...typedPhases(phases), PE: typed(PE) });
const stages = {
  goodJoined: stage('600M | 600M | 600M', '0.2 Ω'),
  badJoined: stage('2M | 2M | 2M', '0.2 Ω'),
  goodCable: { cable: stage('5G | 5G | 5G', '>1G'), bonded: typedPhases('5G | 5G | 5G') },
  badCable: { cable: stage('5G | 2M | 5G', '>1G'), bonded: typedPhases('5G | 2M | 5G') },
  goodMotor: { motor: stage('5G | 5G | 5G', '0.1 Ω') },
  badMotor: { motor: stage('2M | 2M | 2M', '0.1 Ω') },
};

const again = (ohms: string) => ({ again: typed(ohms), dried: 'yes' as const });
/** Read again, clean and dry, below the minimum. */
const lowCable = {
  cable: stage('5G | 700k | 5G', '>1G'),
  bonded: typedPhases('5G | 700k | 5G'),
  moreOfCable: again('900k'),
};
const provenMotor = { ...stages.badMotor, moreOfMotor: again('2M') };

const all = { ...stages.goodCable, ...stages.goodMotor };

const usual: IsolationInput = {
  joined: stages.goodJoined,
  idleCores: 'to-pe',
  cableEndsChecked: false,
  suspectedAnyway: false,
  testVoltage: typed('500 V', 'voltage'),
  windingTemperature: typed('20', 'temperature'),
  correction: 'halving',
};

const assess = (change: Partial<IsolationInput>) => assessIsolation({ ...usual, ...change });
const steps = (change: Partial<IsolationInput>) => assess(change).next.map(({ code }) => code);
const codes = (change: Partial<IsolationInput>) => assess(change).findings.map(({ code }) => code);

describe('the order of the stages', () => {
  const { badJoined, goodCable, badCable, goodMotor, badMotor } = stages;
  const rows: [string, Partial<IsolationInput>, string, string[]][] = [
    ['stage 1 good: not go without the other rows', {}, 'undecided', ['test-cable-alone', 'take-bonded-row']],
    ['then the bonded row', { cable: goodCable.cable }, 'undecided', ['take-bonded-row', 'test-motor-alone']],
    ['then the motor', goodCable, 'undecided', ['test-motor-alone']],
    ['all proven good: stop', { ...goodCable, ...goodMotor }, 'go', ['neither-suspect']],
    ['stage 1 bad: cable', { joined: badJoined }, 'no-go', ['test-cable-alone']],
    ['then motor', { joined: badJoined, ...goodCable }, 'no-go', ['test-motor-alone']],
    [
      'then motor, although the cable is bad',
      { joined: badJoined, ...badCable },
      'no-go',
      ['test-motor-alone', 'state-cable-length', 'read-cable-again'],
    ],
    [
      'cable, although the motor is bad',
      { joined: badJoined, ...badMotor },
      'no-go',
      ['test-cable-alone', 'read-motor-again'],
    ],
    ['the motor it may be', { joined: badJoined, ...goodCable, ...badMotor }, 'no-go', ['read-motor-again']],
    ['the motor it was', { joined: badJoined, ...goodCable, ...provenMotor }, 'no-go', ['replace-motor']],
    [
      'the cable it was',
      { joined: stage('700k | 700k | 700k', '0.2 Ω'), ...lowCable, ...goodMotor },
      'no-go',
      ['replace-cable'],
    ],
    ['both', { joined: stage('450k | 450k | 450k', '0.2 Ω'), ...lowCable, ...provenMotor }, 'no-go', ['replace-both']],
    ['neither', { joined: badJoined, ...goodCable, ...goodMotor }, 'undecided', ['re-measure-contradiction']],
  ];
  it.each(rows)('%s', (_, change, verdict, next) => {
    expect(assess(change).verdict).toBe(verdict);
    expect(steps(change)).toEqual(next);
  });
});

describe('what is proven', () => {
  const { badJoined, goodCable, badCable, goodMotor, badMotor } = stages;
  const rows: [Partial<IsolationInput>, string, string][] = [
    [{}, 'not-suspect', 'not-suspect'],
    [{ suspectedAnyway: true }, 'not-tested', 'not-tested'],
    [{ joined: badJoined }, 'not-tested', 'not-tested'],
    [{ joined: badJoined, ...goodCable }, 'proven-good', 'not-tested'],
    [{ joined: badJoined, ...badCable }, 'suspect', 'not-tested'],
    [{ joined: badJoined, ...lowCable }, 'proven-bad', 'not-tested'],
    [{ joined: badJoined, ...goodCable, ...badMotor }, 'proven-good', 'suspect'],
    [{ joined: badJoined, ...goodCable, ...provenMotor }, 'proven-good', 'proven-bad'],
    [{ joined: badJoined, ...badCable, ...goodMotor }, 'suspect', 'proven-good'],
    [{ joined: badJoined, ...goodCable, ...goodMotor }, 'undecided', 'undecided'],
    [{ ...badMotor }, 'not-tested', 'undecided'],
    [{ ...badCable }, 'undecided', 'not-tested'],
    [{ ...goodCable, ...goodMotor }, 'proven-good', 'proven-good'],
    [{ joined: badJoined, cable: goodCable.cable }, 'undecided', 'not-tested'],
  ];
  it.each(rows)('case %#: cable %s, motor %s', (change, cable, motor) => {
    expect(assess(change).parts).toMatchObject({ cable, motor });
  });

  it.each([
    ['0.2 Ω', 'proven-good', 'go'],
    ['OL', 'suspect', 'no-go'],
    ['20 Ω', 'suspect', 'no-go'],
    ['0 MΩ', 'undecided', 'undecided'],
    ['', 'not-tested', 'undecided'],
  ])('of the protective conductor that reads “%s”: %s, %s', (PE, protectiveConductor, verdict) => {
    const change = { ...all, joined: stage('600M | 600M | 600M', PE) };
    expect(assess(change).parts.protectiveConductor).toBe(protectiveConductor);
    expect(assess(change).verdict).toBe(verdict);
  });
});

describe('a broken protective conductor', () => {
  const joined = stage('600M | 600M | 600M', 'OL');

  it('is no-go although everything else is good', () => {
    const change = { joined, ...stages.goodCable, ...stages.goodMotor };
    expect(assess(change).verdict).toBe('no-go');
    expect(steps(change)).toContain('find-broken-pe');
  });

  it('is in the cable or a connector if the motor has its PE', () => {
    expect(codes({ joined, ...stages.goodMotor })).toContain('cable-pe-broken-implied');
    expect(codes({ joined, motor: stage('5G | 5G | 5G', 'OL') })).not.toContain('cable-pe-broken-implied');
  });
});

describe('a long protective conductor', () => {
  // 1.5 mm² has 12.1 Ω/km at 20 °C (IEC 60228, class 1 and 2; recalled): 85 m is 1.03 Ω.
  const change = { ...all, joined: stage('600M | 600M | 600M', '1.2 Ω') };
  const peConductor = { metres: 85, squareMillimetres: 1.5, amperes: 0.2 };

  it('that reads what its length lets expect is sound', () => {
    expect(assess({ ...change, peConductor }).parts.protectiveConductor).not.toMatch(/suspect|bad/);
    expect(assess({ ...change, peConductor }).verdict).not.toBe('no-go');
  });

  it('is proven broken by two readings, and only if the frame has another way to ground', () => {
    const broken = { ...change, joined: stage('600M | 600M | 600M', 'OL'), peAgain: typed('OL'), peConductor };
    const status = (frameEarthed: NonNullable<IsolationInput['frameEarthed']>) =>
      assess({ ...broken, frameEarthed }).parts.protectiveConductor;
    expect(status('also-otherwise')).toBe('proven-bad');
    expect(status('only-pe')).toBe('suspect');
    expect(status('not-stated')).toBe('suspect');
    expect(assess({ ...broken, frameEarthed: 'only-pe' }).verdict).toBe('no-go');
  });
});

describe('contradictions', () => {
  it('joined good and a part bad: nothing is replaced, everything measured again', () => {
    // A core that fails beside its grounded neighbours bars power, whatever stage 1 says.
    for (const [part, verdict] of [[stages.badMotor, 'undecided'] as const, [stages.badCable, 'no-go'] as const]) {
      expect(assess(part).verdict).toBe(verdict);
      expect(codes(part)).toContain('good-joined-bad-part');
      expect(steps(part)).toContain('re-measure-contradiction');
      expect(steps(part).some((step) => step.startsWith('replace'))).toBe(false);
    }
  });

  it('among passing readings, a low joined reading that does not fit is only a remark', () => {
    // 5 GΩ three times and 5 GΩ are 1.25 GΩ; 600 MΩ is lower than their errors explain, and still good.
    const { findings, verdict } = assess({ ...stages.goodCable, ...stages.goodMotor });
    expect(verdict).toBe('go');
    expect(
      findings.filter(({ code }) => code === 'joined-too-low').every(({ severity }) => severity === 'caution'),
    ).toBe(true);
  });

  it('joined much too high with bad parts is a reason to measure again', () => {
    const tight = typedPhases('120M | 120M | 120M');
    const change = {
      joined: stage('2G | 2G | 2G', '0.2 Ω'),
      cable: { ...tight, PE: typed('>1G') },
      bonded: tight,
      motor: { ...tight, PE: typed('0.1 Ω') },
    };
    const { verdict, findings } = assess(change);
    expect(verdict).toBe('undecided');
    expect(
      findings.filter(({ code, severity }) => code === 'joined-too-high' && severity === 'undecided'),
    ).toHaveLength(3);
  });
});

describe('over-range on a tester whose limit is stated', () => {
  it('counts against the parts like a noted bound', () => {
    // Cable 150 MΩ beside motor 150 MΩ is 75 MΩ, and not 100 MΩ with the error of a tester: joined cannot be good.
    const tight = typedPhases('150M | 150M | 150M');
    const parts = { cable: { ...tight, PE: typed('>1G') }, bonded: tight, motor: { ...tight, PE: typed('0.1 Ω') } };
    const noted = assess({ ...parts, joined: stage('>2G | >2G | >2G', '0.2 Ω') });
    const unnoted = assess({ ...parts, joined: stage('OL | OL | OL', '0.2 Ω'), instrument: { upperLimit: 2e9 } });
    expect([noted.verdict, unnoted.verdict]).toEqual(['undecided', 'undecided']);
    expect(unnoted.findings.map(({ code }) => code)).toContain('joined-too-high');
  });
});

describe('what must be given', () => {
  it.each([
    ['', 'state-test-voltage'],
    ['9 V', 'use-insulation-tester'],
  ])('a test voltage of “%s”: %s', (text, next) => {
    const change = { testVoltage: typed(text, 'voltage') };
    expect(assess(change).verdict).toBe('undecided');
    expect(steps(change)).toContain(next);
  });

  it('without a winding temperature nothing passes, and bad is only what is bad at every usual one', () => {
    const at = (size: string) =>
      assess({ ...all, joined: stage(`${size} | ${size} | ${size}`, '0.2 Ω'), windingTemperature: missing }).verdict;
    expect(at('600M')).toBe('undecided');
    expect(at('391k')).toBe('undecided');
    const alone = { joined: stage('390k | 390k | 390k', '0.2 Ω'), windingTemperature: missing };
    expect(assess(alone).verdict).toBe('no-go');
    expect(steps({ ...all, windingTemperature: missing })).toContain('state-winding-temperature');
  });

  it('outside the validity of the method nothing passes', () => {
    expect(assess({ windingTemperature: typed('-5', 'temperature') }).verdict).toBe('undecided');
    expect(assess({ windingTemperature: typed('120', 'temperature') }).verdict).toBe('undecided');
    expect(assess({ windingTemperature: missing, correction: 'thermosetting' }).verdict).toBe('undecided');
  });

  it.each(['', '0 MΩ', '<1k'])('a joined PE of “%s” is measured on the lowest range', (PE) => {
    expect(steps({ joined: stage('600M | 600M | 600M', PE) })).toContain('measure-pe-low-range');
  });

  it('a missing joined stage is asked for', () => {
    const nothing = { joined: stage(' | | ', '') };
    expect(assess(nothing).verdict).toBe('undecided');
    expect(steps(nothing)).toEqual(['measure-joined', 'measure-pe-low-range']);
  });
});

describe('removing a reading or row never makes a go', () => {
  const bondedBad = typedPhases('2M | 3M | 5G');

  it('a bonded row that shows cores leaking to each other', () => {
    const bad = { ...all, bonded: bondedBad };
    expect(assess(bad).verdict).toBe('no-go');
    const { bonded: _cleared, ...cleared } = bad;
    expect(assess(cleared).verdict).toBe('undecided');
    expect(steps(cleared)).toContain('take-bonded-row');
    expect(assess({ bonded: bondedBad }).verdict).toBe('no-go');
    expect(assess({}).verdict).toBe('undecided');
  });

  it('a motor that contradicts the joined reading, whole', () => {
    expect(assess({ ...stages.goodCable, ...stages.badMotor }).verdict).toBe('undecided');
    expect(assess(stages.goodCable).verdict).toBe('undecided');
  });

  it('a temperature that is outside the usual ones', () => {
    expect(assess({ ...all, windingTemperature: typed('-5', 'temperature') }).verdict).toBe('undecided');
    expect(assess({ ...all, windingTemperature: missing }).verdict).toBe('undecided');
  });
});

describe('a symptom that points here', () => {
  it('asks for proof of both parts, and for the cable to be moved', () => {
    const change = { suspectedAnyway: true };
    expect(assess(change).verdict).toBe('undecided');
    expect(codes(change)).toContain('symptom-outweighs-joined');
    expect(steps(change)).toEqual(['flex-cable', 'test-cable-alone']);
  });

  it('is answered once both are proven good', () => {
    expect(assess({ suspectedAnyway: true, ...stages.goodCable }).verdict).toBe('undecided');
    expect(assess({ suspectedAnyway: true, ...stages.goodCable, ...stages.goodMotor }).verdict).toBe('go');
  });
});
