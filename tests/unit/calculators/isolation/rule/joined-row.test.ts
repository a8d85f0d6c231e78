import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import {
  assess,
  badJoined,
  cable,
  celsius,
  codes,
  find,
  goodCable,
  goodMotor,
  joined,
  linesOf,
  motor,
  stage,
  steps,
  usual,
} from './separated.ts';

describe('an impossible figure', () => {
  it('is all that is judged', () => {
    expect(assess({ joined: { ...usual.joined, U: ohms(-1) } })).toEqual({
      verdict: 'undecided',
      findings: [{ code: 'figure-impossible', severity: 'undecided', readings: ['joined.U'], limits: [] }],
      next: [{ code: 'read-figure-again' }],
      parts: { cable: 'undecided', motor: 'undecided', protectiveConductor: 'undecided' },
    });
  });
});

describe('U, V and W read joined', () => {
  const row = (phases: string, together: string) => ({
    joined: { ...stage(phases, '0.2 Ω'), together: typed(together) },
  });
  const lowest = (phases: string, together: string) =>
    assess(row(phases, together)).findings.find(({ code }) => code === 'stage-good' || code === 'stage-bad');

  it('stand for the three, in the motor as well', () => {
    const alone = { motor: { ...stage(' | | ', '0.1 Ω'), together: typed('5G') } };
    const change = { ...row(' | | ', '600M'), ...goodCable, ...alone };
    expect(assess(change).verdict).toBe('go');
    expect(linesOf(change, ['stage-good'])).toEqual([
      'stage-good pass joinedU joinedV joinedW',
      'stage-good pass cableU cableV cableW',
      'stage-good pass bondedU bondedV bondedW',
      'stage-good pass motorU motorV motorW',
    ]);
  });

  it('count beside single readings if they are lower', () => {
    expect(lowest('600M | 610M | 620M', '2M')).toMatchObject({
      code: 'stage-bad',
      lowestOhms: 2e6,
      phases: ['U', 'V', 'W'],
    });
    expect(lowest('600M | 610M | 620M', '615M')).toMatchObject({ code: 'stage-good', lowestOhms: 600e6 });
    expect(lowest('2M | 2M | 2M', '600M')).toMatchObject({ code: 'stage-bad', lowestOhms: 2e6 });
  });

  it('do not stand for one that lacks beside others', () => {
    const change = row('600M | 600M | ', '600M');
    expect(assess(change).verdict).toBe('undecided');
    expect(linesOf(change, ['stage-incomplete'])).toEqual(['stage-incomplete undecided joinedW']);
    expect(steps(change)).toEqual(['measure-joined']);
  });
});

describe('through a filter', () => {
  const change = { filter: 'fitted' as const, ...goodCable, ...goodMotor };

  it('nothing of the cable is judged, good or bad', () => {
    for (const bad of [{}, badJoined, cable('5G | 2M | 5G', '5G | 2M | 5G')]) {
      const { verdict, findings, parts } = assess({ ...change, ...bad });
      expect(verdict).toBe('undecided');
      expect(parts).toMatchObject({ cable: 'undecided', motor: 'proven-good' });
      const judged = findings.flatMap((one) => ('stage' in one ? [one.stage] : []));
      expect(judged).toEqual(['motor']);
      expect(codes({ ...change, ...bad }).filter((code) => /fit$|^joined-too|leak/.test(code))).toEqual([]);
    }
  });

  it('it is taken off first', () => {
    expect(steps(change)[0]).toBe('take-filter-off');
  });
});

describe('the limits of a winding', () => {
  const limits = (change: Parameters<typeof assess>[0], code: 'stage-good' | 'stage-temperature-needed') =>
    find(change, code).limits;

  it('are the point, its temperature and the method', () => {
    const own = ['after-trip-point', 'reference-temperature-after-trip', 'halving-rule', 'halving-validity'];
    expect(limits({}, 'stage-good')).toEqual(own);
    expect(limits({ windingTemperature: missing }, 'stage-temperature-needed')).toEqual([
      ...own,
      'motor-temperature-unknown',
    ]);
  });

  it('of PE by its length are those of the length', () => {
    const peConductor = { metres: 10, squareMillimetres: 1.5 };
    expect(find({ peConductor }, 'joined-pe-short').limits).toContain('pe-core-resistance');
  });
});

describe('the temperature of the motor', () => {
  it('is that of the joined stage if no other was stated', () => {
    const hot = motor('60M | 60M | 60M');
    expect(codes({ ...hot, windingTemperature: celsius('40') })).toContain('stage-hot');
    expect(codes({ ...hot, motorTemperature: celsius('40') })).toContain('stage-hot');
    expect(codes({ ...hot, windingTemperature: celsius('40'), motorTemperature: celsius('20') })).toContain(
      'stage-bad',
    );
  });

  it('is taken into account where the stages are compared', () => {
    // Joined at 40 °C, the motor at 20 °C: its 600 MΩ were a fourth to a half of that.
    const warm = { ...joined('120M | 120M | 120M'), windingTemperature: celsius('40') };
    const change = { ...warm, ...goodCable, ...motor('600M | 600M | 600M') };
    expect(codes({ ...change, motorTemperature: celsius('20') })).toContain('fit');
    expect(codes(change)).not.toContain('fit');
    // 1 GΩ at 20 °C is 175 MΩ at least at 40 °C (halving, a tester of 30 %) and 991 MΩ at most (thermosetting).
    const at = (text: string) =>
      codes({ ...change, ...joined(text), ...motor('1.000G | 1.000G | 1.000G'), motorTemperature: celsius('20') });
    expect(at('140M | 140M | 140M')).toContain('fit');
    expect(at('110M | 110M | 110M')).toContain('joined-too-low');
    expect(at('600M | 600M | 600M')).toContain('fit');
    expect(at('1.30G | 1.30G | 1.30G')).toContain('joined-too-high');
  });

  it('outside every method compares nothing', () => {
    const change = { ...goodCable, ...goodMotor, motorTemperature: celsius('110') };
    expect(codes(change).filter((code) => /fit$|^joined-too/.test(code))).toEqual([]);
  });

  it('that lacks is no reason to leave the comparison out', () => {
    const lack = { windingTemperature: missing, motorTemperature: celsius('40') };
    expect(codes({ ...badJoined, ...goodCable, ...goodMotor, ...lack })).toContain('joined-too-low');
  });
});

describe('an over-range on a tester with a stated limit', () => {
  it('counts as that limit, or as the noted bound if that is lower', () => {
    // Motor and cable of 300 MΩ each are 195 MΩ at most.
    const parts = { ...cable('300M | 300M | 300M', '300M | 300M | 300M'), ...motor('300M | 300M | 300M') };
    const over = (atLeast: number | undefined, upperLimit: number) => {
      const one = overOhms(atLeast);
      return codes({ ...parts, joined: { U: one, V: one, W: one, PE: typed('0.2 Ω') }, instrument: { upperLimit } });
    };
    expect(over(undefined, 500e6)).toContain('joined-too-high');
    expect(over(180e6, 500e6)).not.toContain('joined-too-high');
    expect(over(2e9, 180e6)).not.toContain('joined-too-high');
  });
});

describe('a joined reading above what the parts allow', () => {
  const tight = { ...cable('120M | 120M | 120M', '120M | 120M | 120M'), ...motor('120M | 120M | 120M') };

  it('bars go only if the parts together are below the after-trip limit', () => {
    expect(assess({ ...joined('2G | 2G | 2G'), ...tight }).verdict).toBe('undecided');
    // 300 MΩ beside 300 MΩ is 195 MΩ with the error of a tester: above the after-trip limit.
    const high = '300M | 300M | 300M';
    const change = { ...joined('2G | 2G | 2G'), ...cable(high, high), ...motor(high) };
    expect(assess(change).verdict).toBe('go');
    expect(find(change, 'joined-too-high').severity).toBe('caution');
  });

  it('or below what they allow without the bonded row names the error of a tester', () => {
    expect(find({ ...joined('2G | 2G | 2G'), ...tight }, 'joined-too-high').limits).toEqual([
      'insulation-tester-error',
    ]);
    const { bonded: _bonded, ...alone } = goodCable;
    expect(find({ ...alone, ...goodMotor }, 'joined-needs-bonded').severity).toBe('caution');
  });

  it('leaves both parts undecided', () => {
    expect(assess({ ...joined('2G | 2G | 2G'), ...tight }).parts).toMatchObject({
      cable: 'undecided',
      motor: 'undecided',
    });
  });

  it('weighs nothing beside a leak that joined can’t show', () => {
    const change = { ...goodCable, bonded: typedPhases('2M | 3M | 5G'), ...goodMotor };
    expect(linesOf(change, ['joined-too-high']).every((one) => one.includes('caution'))).toBe(true);
    expect(assess(change).parts).toMatchObject({ cable: 'suspect', motor: 'proven-good' });
    expect(steps(change)).toEqual(['state-cable-length', 'read-cable-again']);
  });
});
