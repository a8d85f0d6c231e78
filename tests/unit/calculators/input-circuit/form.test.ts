import { expect, test } from 'vitest';
import { calculator } from '../../../../src/calculators/input-circuit/form.ts';
import { fillForm } from '../../../../src/kernel/form/field.ts';

const onePhase = {
  ...{ busVoltage: '0.02', supplyLeads: 'off', others: 'off', lines: 'two', climb: 'climbs' },
  ...{ fuseL1: '0.2 Ω', fuseL2: '0.2 Ω', precharge: 'reached', prechargePlate: '47 Ω', prechargeOhms: '47.1 Ω' },
  ...Object.fromEntries(
    ['L1', 'L2'].flatMap((line) => [
      [`plusConducting${line}`, '0.46'],
      [`plusBlocking${line}`, 'OL'],
      [`minusConducting${line}`, '0.46'],
      [`minusBlocking${line}`, 'OL'],
    ]),
  ),
  ...{ linkConducting: '0.92', linkBlocking: 'OL' },
};

const judged = (more: Record<string, string> = {}) => {
  const outcome = calculator.judge(fillForm(calculator.fields, { ...onePhase, ...more }));
  return outcome.state === 'judged' ? outcome.verdict : outcome.state;
};

test('a drive on one phase needs no readings at L3', () => {
  expect(judged()).toBe('go');
});

test('a reading at L3 is judged, though two lines are stated', () => {
  expect(judged({ plusConductingL3: '0.00', plusBlockingL3: '0.00' })).toBe('no-go');
  expect(judged({ plusConductingL3: '0.46' })).toBe('undecided');
});
