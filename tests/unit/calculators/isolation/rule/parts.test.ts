import { describe, expect, it } from 'vitest';
import type { IsolationInput, StageReadings } from '../../../../../src/calculators/isolation/rule/input.ts';
import { motorGrounds } from '../../../../../src/calculators/isolation/rule/motor-grounds.ts';
import { judgeCable, judgeMotor, peFinding } from '../../../../../src/calculators/isolation/rule/parts.ts';
import { judgeAfterTrip } from '../../../../../src/kernel/assessment/judge-insulation.ts';
import { limitValue } from '../../../../../src/kernel/limits.ts';
import { intervalOf } from '../../../../../src/kernel/reading/interval.ts';
import type { Reading } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

const stage = (phases: string, PE: string): StageReadings => ({ ...typedPhases(phases), PE: typed(PE) });
const good = '5G | 5G | 5G';

function cable(core: StageReadings | undefined, bonded: string | undefined, endsChecked = false, tested = true) {
  const input = {
    ...(core === undefined ? {} : { cable: core }),
    ...(bonded === undefined ? {} : { bonded: typedPhases(bonded) }),
    cableEndsChecked: endsChecked,
  } as Parameters<typeof judgeCable>[0];
  const { status, showsBad, findings } = judgeCable(input, {}, tested);
  return { status, showsBad, codes: findings.map(({ code }) => code) };
}

/** With a known temperature factor. */
function judgedAt(factor: number) {
  return (reading: Reading) =>
    judgeAfterTrip(reading, intervalOf(reading), limitValue('after-trip-point'), { lo: factor, hi: factor });
}

const means = {
  instrument: {},
  grounds: motorGrounds({ correction: 'halving' } as IsolationInput, typed('20', 'temperature')),
};

function motor(phases: string, PE: string, factor = 1) {
  const input = { motor: stage(phases, PE) } as Parameters<typeof judgeMotor>[0];
  const { status, showsBad, findings } = judgeMotor(input, judgedAt(factor), true, [], means);
  return { status, showsBad, codes: findings.map(({ code }) => code) };
}

describe('the cable alone', () => {
  it('is good with both rows good and its PE core isolated', () => {
    expect(cable(stage(good, '>1G'), good)).toEqual({
      status: 'good',
      showsBad: false,
      codes: ['stage-good', 'stage-good', 'cable-pe-isolated'],
    });
  });

  it('is not good without the bonded row: its blind spot is still open', () => {
    const { status, codes } = cable(stage(good, '>1G'), undefined);
    expect(status).toBe('undecided');
    expect(codes).toContain('bonded-row-missing');
  });

  it('is not good by the bonded row alone', () => {
    const { status, codes } = cable(undefined, good);
    expect(status).toBe('undecided');
    expect(codes).toContain('cable-pe-missing');
  });

  it('is bad by either row', () => {
    expect(cable(stage('5G | 1M | 5G', '>1G'), good).status).toBe('bad');
    expect(cable(stage(good, '>1G'), '5G | 1M | 5G').status).toBe('bad');
    expect(cable(undefined, '5G | 1M | 5G').status).toBe('bad');
  });

  it('is neither if nothing was taken', () => {
    expect(cable(undefined, undefined)).toEqual({ status: 'not-taken', showsBad: false, codes: [] });
  });

  it('is not passed by a low test voltage', () => {
    expect(cable(stage(good, '>1G'), good, false, false).status).toBe('undecided');
  });

  it.each([
    ['>1G', false, 'cable-pe-isolated', 'good'],
    ['100M', false, 'cable-pe-isolated', 'good'],
    ['99M', false, 'cable-pe-low', 'undecided'],
    ['0.3 Ω', false, 'cable-pe-low', 'undecided'],
    ['0.3 Ω', true, 'cable-pe-low-ends-checked', 'bad'],
    ['99M', true, 'cable-pe-low-ends-checked', 'bad'],
    ['OL', false, 'cable-pe-unclear', 'undecided'],
    ['>72M', true, 'cable-pe-unclear', 'undecided'],
    ['<1G', true, 'cable-pe-unclear', 'undecided'],
    ['', true, 'cable-pe-missing', 'undecided'],
  ])('whose PE core reads “%s” (ends checked: %s): %s, %s', (PE, endsChecked, code, status) => {
    const judged = cable(stage(good, PE), good, endsChecked);
    expect(judged.codes).toContain(code);
    expect(judged.status).toBe(status);
  });

  it('with an end that may still be connected proves nothing, but its bad readings are remembered', () => {
    expect(cable(stage('5G | 1M | 5G', '0.3 Ω'), good)).toMatchObject({ status: 'undecided', showsBad: true });
  });
});

describe('the motor alone', () => {
  it.each([
    [good, '0.1 Ω', 'good', ['stage-good', 'motor-pe-short']],
    ['2M | 2M | 2M', '0.1 Ω', 'bad', ['stage-bad', 'motor-pe-short', 'part-suspect']],
    [good, 'OL', 'bad', ['stage-good', 'motor-pe-not-short']],
    [good, '5 Ω', 'bad', ['stage-good', 'motor-pe-not-short']],
    [good, '0 MΩ', 'undecided', ['stage-good', 'motor-pe-not-proven']],
    [good, '', 'undecided', ['stage-good', 'motor-pe-missing']],
    ['5G | | 5G', '0.1 Ω', 'undecided', ['stage-good', 'stage-incomplete', 'motor-pe-short']],
  ])('%s, PE “%s”: %s', (phases, PE, status, codes) => {
    expect(motor(phases, PE)).toMatchObject({ status, codes });
  });

  it('with two dead shorts is bad, since exactly one may be', () => {
    const { status, codes } = motor('0.1 Ω | 5G | 5G', '0.1 Ω');
    expect(status).toBe('bad');
    expect(codes).toContain('motor-two-shorts');
  });

  it('with its one dead short at another pin may have its pins mistaken', () => {
    const mistaken = motor('0.1 Ω | 5G | 5G', '5G');
    expect(mistaken.codes).toContain('motor-pins-mistaken');
    // Not condemned before the pin order is checked, and no drive is connected either.
    expect(mistaken).toMatchObject({ status: 'undecided', showsBad: true });
    expect(motor('0.1 Ω | 0.1 Ω | 5G', '5G').codes).not.toContain('motor-pins-mistaken');
  });

  it('is corrected for its temperature', () => {
    expect(motor('60M | 60M | 60M', '0.1 Ω', 4)).toMatchObject({ status: 'undecided', showsBad: false });
    expect(motor('20M | 20M | 20M', '0.1 Ω', 4)).toMatchObject({ status: 'bad', showsBad: true });
  });

  it('is neither if it was not taken', () => {
    expect(judgeMotor({} as Parameters<typeof judgeMotor>[0], judgedAt(1), true, [], means).status).toBe('not-taken');
  });
});

describe('the protective conductor', () => {
  it.each([
    ['short', 'pass'],
    ['higher-than-expected', 'undecided'],
    ['not-short', 'fail'],
    ['not-proven', 'undecided'],
    ['missing', 'undecided'],
  ] as const)('%s: %s', (judgement, severity) => {
    expect(peFinding('joined', judgement)).toMatchObject({
      code: `joined-pe-${judgement}`,
      severity,
      readings: ['joinedPE'],
      limits: ['pe-dead-short'],
    });
    expect(peFinding('motor', judgement).readings).toEqual(['motorPE']);
  });
});
