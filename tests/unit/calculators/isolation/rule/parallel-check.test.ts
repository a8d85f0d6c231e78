import { describe, expect, it } from 'vitest';
import { checkFit } from '../../../../../src/calculators/isolation/rule/parallel-check.ts';
import { found } from '../../../../support/found.ts';
import { typedPhases } from '../../../../support/typed.ts';

function fit(joined: string, parts: { cable?: string; bonded?: string; motor?: string }) {
  const row = (text: string | undefined) => (text === undefined ? undefined : typedPhases(text));
  return checkFit({
    joined: typedPhases(joined),
    cable: row(parts.cable),
    bonded: row(parts.bonded),
    motor: row(parts.motor),
  });
}
const codes = (...parameters: Parameters<typeof fit>) => fit(...parameters).map(({ code }) => code);

describe('all stages taken', () => {
  const cable = '900M | 900M | 900M';
  const parts = { cable, bonded: cable, motor: '300M | 300M | 300M' };

  it('fit if joined is cable in parallel with motor', () => {
    // 900/3 and 300 MΩ in parallel are 150 MΩ.
    expect(codes('150M | 150M | 150M', parts)).toEqual(['fit']);
  });

  it('fit within the error that an insulation tester may have, on both sides', () => {
    // At most one core and the motor, 225 MΩ, each 30 % high: 292 MΩ; joined 30 % low: up to 417 MΩ.
    expect(codes('400M | 400M | 400M', parts)).toEqual(['fit']);
    expect(codes('420M | 420M | 420M', parts)).toContain('joined-too-high');
    // At least 150 MΩ, 30 % low: 105 MΩ; joined 30 % high: down to 81 MΩ.
    expect(codes('82M | 82M | 82M', parts)).toEqual(['fit']);
    expect(codes('80M | 80M | 80M', parts)).toContain('joined-too-low');
  });

  it('count a step of the display if that is more than the error', () => {
    // A tester's zero is anything up to one step; a multimeter finds the motor at half an ohm.
    const dead = { cable, bonded: '900M | 900M | 900M', motor: '0.5 Ω | 0.5 Ω | 0.5 Ω' };
    expect(codes('0.00M | 0.00M | 0.00M', dead)).toEqual(['fit']);
    expect(codes('0.01M | 0.01M | 0.01M', dead)).toEqual(['fit']);
    expect(codes('0.50M | 0.50M | 0.50M', dead)).toContain('joined-too-high');
  });

  it('never extend a one-digit figure down to zero', () => {
    for (const [one, other] of [
      ['1G', '900M'],
      ['800M', '1G'],
      ['1G', '1G'],
      ['2G', '1G'],
      ['800M', '900M'],
    ] as const) {
      const three = (text: string) => `${text} | ${text} | ${text}`;
      const stages = { cable: three(one), bonded: three(one), motor: three(other) };
      expect(codes(three('0.5M'), stages)).toEqual(['joined-too-low', 'joined-too-low', 'joined-too-low']);
      expect(codes(three('1G'), { cable: three('200M'), bonded: three('200M'), motor: three('300M') })).toContain(
        'joined-too-high',
      );
    }
  });

  it('ignore a step of the display only if it decides nothing', () => {
    const dead = { cable, bonded: cable, motor: '0.5 Ω | 0.5 Ω | 0.5 Ω' };
    expect(codes('0.1M | 0.1M | 0.1M', dead)).toEqual(['fit']);
    expect(codes('1M | 1M | 1M', dead)).toContain('joined-too-high');
    expect(codes('0.01G | 0.01G | 0.01G', dead)).toContain('joined-too-high');
  });

  it('say which terminal does not fit, with the figures as read', () => {
    const findings = fit('150M | 150M | 80M', parts);
    expect(findings).toHaveLength(1);
    const low = found(findings, 'joined-too-low');
    expect(low).toMatchObject({ phase: 'W', joinedOhms: 80e6, readings: ['joinedW', 'cableW', 'motorW'] });
    expect(low.leastOhms).toBeCloseTo(105e6, 0);
  });

  it('take the lower of free and bonded row for each core', () => {
    const bonded = '900M | 1.5M | 900M';
    expect(codes('1.49M | 1.49M | 1.49M', { ...parts, bonded })).toEqual(['fit']);
  });

  it('without the bonded row leave a leak to the PE core possible', () => {
    expect(codes('1.5M | 1.5M | 1.5M', { cable, motor: parts.motor })).toEqual([
      'joined-needs-bonded',
      'joined-needs-bonded',
      'joined-needs-bonded',
    ]);
  });

  it('do not fit if joined passes the point and the parts together can’t', () => {
    const tight = '120M | 120M | 120M';
    expect(codes('110M | 110M | 110M', { cable: tight, bonded: tight, motor: tight })).toContain('joined-too-high');
    expect(codes('90M | 90M | 90M', { cable: tight, bonded: tight, motor: tight })).toEqual(['fit']);
  });

  it('say nothing about a missing terminal', () => {
    expect(codes('150M | | ', parts)).toEqual(['fit']);
    expect(codes(' | | ', parts)).toEqual([]);
    expect(codes('150M | 150M | 150M', { ...parts, motor: '300M | | ' })).toEqual([]);
  });

  it('over-ranges fit with anything above their bound', () => {
    expect(codes('>700M | >700M | >700M', { cable: '>1.8G | >1.8G | >1.8G', motor: '>1.8G | >1.8G | >1.8G' })).toEqual([
      'fit',
    ]);
    expect(codes('2M | 2M | 2M', { cable: '>1.8G | >1.8G | >1.8G', motor: '>1.8G | >1.8G | >1.8G' })).toContain(
      'joined-needs-bonded',
    );
  });
});

describe('the value of a stage that was not taken', () => {
  it('of the motor follows from joined and cable', () => {
    const readings = { cable: '5G | 5G | 5G', bonded: '5G | 5G | 5G' };
    const implied = found(fit('2.000M | 2.000M | 2.000M', readings), 'implied-motor');
    // Joined 1.4 to 2.6 MΩ; three cores of 3.5 GΩ and more beside it hardly count.
    expect(implied.lowestOhms).toBeCloseTo(1.4e6, -3);
    expect(implied.highestOhms).toBeCloseTo(2.6058e6, -3);
  });

  it('of the cable follows from joined and motor', () => {
    const implied = found(fit('2.000M | 2.000M | 2.000M', { motor: '300M | 300M | 300M' }), 'implied-cable');
    // 2.6 MΩ beside 210 MΩ, once: the three readings of the motor are one and the same insulation.
    expect(implied.highestOhms).toBeCloseTo(1 / (1 / 2.6e6 - 1 / 210e6), 0);
  });

  it('has no upper end if the known part alone may explain joined', () => {
    const readings = '2.000M | 2.000M | 2.000M';
    const implied = found(fit(readings, { motor: readings }), 'implied-cable');
    expect(implied.highestOhms).toBeUndefined();
    expect(implied.lowestOhms).toBeGreaterThan(2e6);
  });

  it('is calculated from the lowest joined terminal', () => {
    const [implied] = fit('600M | 2.000M | 600M', { cable: '5G | 5G | 5G' });
    expect(implied?.readings).toEqual(['joinedV']);
  });

  it('is not calculated from half a stage, or from joined alone', () => {
    expect(codes('2.000M | 2.000M | 2.000M', { cable: '5G | 5G | ' })).toEqual([]);
    expect(codes('2.000M | 2.000M | 2.000M', {})).toEqual([]);
    expect(codes('2.000M | 2.000M | 2.000M', { bonded: '5G | 5G | 5G' })).toEqual([]);
  });
});
