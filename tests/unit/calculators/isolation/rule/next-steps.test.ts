import { describe, expect, it } from 'vitest';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';
import { badJoined, type Change, cable, celsius, goodCable, goodMotor, joined, motor, steps } from './separated.ts';

const high = '5G | 5G | 5G';
const open = joined('OL | OL | OL');
const at = (text: string): Change => ({ windingTemperature: celsius(text) });
const thermosetting: Change = { correction: 'thermosetting' };

describe('an undecided joined reading', () => {
  const rows: [what: string, Change, next: string[]][] = [
    ['hot', { ...joined('60M | 60M | 60M'), ...at('40') }, ['let-motor-cool']],
    ['cold', { ...joined('150M | 150M | 150M'), ...at('10') }, ['let-motor-warm']],
    ['methods differ, warm', { ...joined('30M | 30M | 30M'), ...at('40'), ...thermosetting }, ['let-motor-cool']],
    ['methods differ, cold', { ...joined('150M | 150M | 150M'), ...at('10'), ...thermosetting }, ['let-motor-warm']],
    ['a range not noted', open, ['repeat-joined']],
    ['a range not noted of one', joined('600M | OL | 600M'), ['repeat-joined']],
    ['one hot, one without a range', { ...joined('60M | OL | 60M'), ...at('40') }, ['repeat-joined', 'let-motor-cool']],
    ['unfinished', joined('600M | | 600M'), ['measure-joined']],
    ['a symptom', { ...open, suspectedAnyway: true }, ['repeat-joined', 'test-cable-alone']],
    ['the cable begun', { ...open, ...goodCable }, ['repeat-joined', 'test-motor-alone']],
    ['the motor begun', { ...open, ...goodMotor }, ['repeat-joined', 'test-cable-alone']],
  ];
  it.each(rows)('%s', (_, change, next) => {
    expect(steps(change)).toEqual(next);
  });

  it('of a stage that is good or bad asks for no other temperature', () => {
    expect(steps({ ...badJoined, ...at('40') })).toEqual(['test-cable-alone']);
    expect(steps({ ...joined('60M | 2M | 60M'), ...at('40') })).toEqual(['test-cable-alone']);
  });
});

describe('the cable', () => {
  const rows: [what: string, Change, next: string[]][] = [
    ['whose PE core reads low', cable(high, high, '2M'), ['check-ends-free', 'complete-cable', 'test-motor-alone']],
    ['with its bonded row alone', { bonded: typedPhases(high) }, ['complete-cable', 'test-motor-alone']],
    [
      'that fails in its bonded row alone',
      { bonded: typedPhases('5G | 2M | 5G') },
      ['complete-cable', 'test-motor-alone', 'state-cable-length', 'read-cable-again'],
    ],
    ['whose PE core was not read', cable(high, high, ''), ['complete-cable', 'test-motor-alone']],
    ['with a reading that does not tell', cable('5G | OL | 5G', high), ['complete-cable', 'test-motor-alone']],
    ['whose PE core does not tell', cable(high, high, 'OL'), ['complete-cable', 'test-motor-alone']],
    ['without its bonded row', cable(high, undefined), ['take-bonded-row', 'test-motor-alone']],
    [
      'that fails without its bonded row, which it needs no more',
      { ...badJoined, ...cable('5G | 2M | 5G', undefined) },
      ['test-motor-alone', 'state-cable-length', 'read-cable-again'],
    ],
    [
      'that fails below what any length explains',
      { ...badJoined, ...cable('5G | 0.99M | 5G', '5G | 0.99M | 5G') },
      ['test-motor-alone', 'read-cable-again'],
    ],
    [
      'that fails just at what a length explains',
      { ...badJoined, ...cable('5G | 1.0M | 5G', high) },
      ['test-motor-alone', 'state-cable-length', 'read-cable-again'],
    ],
    [
      'whose length is known',
      { ...badJoined, ...cable('5G | 2M | 5G', '5G | 2M | 5G'), cableMetres: typed('10 m', 'length') },
      ['test-motor-alone', 'read-cable-again'],
    ],
    ['beside a symptom that joined bad explains', { ...badJoined, suspectedAnyway: true }, ['test-cable-alone']],
  ];
  it.each(rows)('%s', (_, change, next) => {
    expect(steps(change)).toEqual(next);
  });
});

describe('the motor', () => {
  const rows: [what: string, Change, next: string[]][] = [
    ['with a reading that does not tell', motor('5G | OL | 5G'), ['complete-motor']],
    ['without its PE', motor(high, 'OL'), ['re-measure-contradiction', 'mend-motor-pe']],
    [
      'with its short at another pin',
      motor('0.1 Ω | 5G | 5G', '5G'),
      ['re-measure-contradiction', 'mend-motor-pe', 'check-pin-order'],
    ],
    [
      'that is hot',
      { ...motor('60M | 60M | 60M'), motorTemperature: celsius('40') },
      ['re-measure-contradiction', 'let-motor-cool', 'complete-motor'],
    ],
    [
      'that is cold',
      { ...motor('150M | 150M | 150M'), motorTemperature: celsius('10') },
      ['re-measure-contradiction', 'let-motor-warm', 'complete-motor'],
    ],
  ];
  it.each(rows)('%s', (_, change, next) => {
    expect(steps({ ...goodCable, ...change })).toEqual(next);
  });

  describe('whose second reading does not tell', () => {
    const read = (first: string, again: string, temperature: string, change: Change = {}) =>
      steps({
        ...joined(first),
        ...goodCable,
        ...motor(first),
        ...at(temperature),
        moreOfMotor: { again: typed(again), dried: 'yes' },
        instrument: { percent: 10 },
        ...change,
      });
    const bad = '2M | 2M | 2M';

    it('is read again at room temperature if only the correction leaves it open', () => {
      // By halving, 6.2 MΩ at 60 °C is 99 MΩ at 20 °C, and 199 MΩ at 10 °C is 99.5 MΩ; as read both are far off.
      expect(read(bad, '6.2M', '60')).toEqual(['let-motor-cool', 'read-motor-again']);
      expect(read('60M | 60M | 60M', '199M', '10')).toEqual(['let-motor-warm', 'read-motor-again']);
      // At the limit as read, half of it at 20 °C.
      expect(read('60M | 60M | 60M', '100M', '10', { instrument: {} })).toEqual(['let-motor-warm', 'read-motor-again']);
      // The stage's own temperature counts.
      const cold = { motorTemperature: celsius('20') };
      expect(read(bad, '99M', '60', cold)).toEqual(['re-measure-contradiction', 'read-motor-again']);
    });

    it.each([
      ['one that is too close as read', bad, '105M', '60', {}],
      ['one that is below a bound at the limit', bad, '<100M', '60', { instrument: {} }],
      ['a cable', bad, '2M', '60', { ...cable('2M | 5G | 5G', '2M | 5G | 5G'), moreOfCable: { again: typed('OL') } }],
      ['one at room temperature', bad, '99M', '20', {}],
      ['one that is too close as read, cold', bad, '95M', '10', {}],
      ['one whose temperature nobody knows', bad, '60M', '60', { windingTemperature: missing }],
      ['one that fails', bad, '2M', '60', {}],
    ] as const)('is of no use at another temperature to %s', (_, first, again, temperature, change) => {
      const asked = read(first, again, temperature, change);
      expect(asked).not.toContain('let-motor-cool');
      expect(asked).not.toContain('let-motor-warm');
    });

    it('at too low a voltage needs the tester, not the temperature', () => {
      const byMultimeter = read('60M | 60M | 60M', '900M', '10', { testVoltage: typed('9 V', 'voltage') });
      expect(byMultimeter).toEqual(['use-insulation-tester', 'complete-cable', 'read-motor-again']);
      const unstated = read('60M | 60M | 60M', '900M', '10', { testVoltage: missing });
      expect(unstated).toEqual(['state-test-voltage', 'complete-cable', 'read-motor-again']);
    });
  });

  it('is asked about its insulation, not about the length of a cable', () => {
    expect(steps({ ...badJoined, ...goodCable, ...motor('2M | 2M | 2M') })).toEqual(['read-motor-again']);
  });
});

describe('a contradiction', () => {
  it('with joined good asks for no second reading and replaces nothing', () => {
    const proven = { ...motor('2M | 2M | 2M'), moreOfMotor: { again: typed('2M'), dried: 'yes' as const } };
    expect(steps({ ...goodCable, ...proven })).toEqual(['re-measure-contradiction']);
  });

  it('with joined bad asks for both', () => {
    const core = cable('5G | 2M | 5G', '5G | 2M | 5G');
    expect(steps({ ...badJoined, ...core, ...motor('2M | 2M | 2M') })).toEqual([
      're-measure-contradiction',
      'state-cable-length',
      'read-cable-again',
      'read-motor-again',
    ]);
  });

  it('with joined bad still replaces what two readings convict', () => {
    const core = cable('5G | 0.7M | 5G', '5G | 0.7M | 5G');
    const more = { moreOfCable: { again: typed('0.7M'), dried: 'yes' as const } };
    expect(steps({ ...badJoined, ...core, ...more, ...goodMotor })).toEqual([
      're-measure-contradiction',
      'replace-cable',
    ]);
  });
});
