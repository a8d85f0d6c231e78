import fc from 'fast-check';
import { expect, it } from 'vitest';
import { assessBridgeDiode } from '../../../../src/calculators/bridge-diode/rule/assess.ts';
import { bridgeDiodeFindings, bridgeDiodeSteps } from '../../../../src/calculators/bridge-diode/words.ts';
import { volts } from '../../../../src/kernel/reading/reading.ts';
import { bothTests, diodeTest } from '../../../support/arbitrary-diode.ts';
import { diodeInput } from '../../../support/diode-cases.ts';
import { runs } from '../../../support/runs.ts';
import { sayAll } from '../../../support/sentences.ts';

it('any diode test has clean sentences, and every code occurs', () => {
  const met = new Set<string>();
  const say = (input: Parameters<typeof assessBridgeDiode>[0]) => {
    for (const code of sayAll(assessBridgeDiode(input), bridgeDiodeFindings, bridgeDiodeSteps)) met.add(code);
  };
  fc.assert(fc.property(fc.oneof(diodeTest, bothTests), say), { numRuns: Math.max(runs, 5000) });
  say({ ...diodeInput({}), busVoltage: volts(Number.NaN) });
  say(diodeInput({ minusForward: '0.41 | 0.003 | 0.41', minusReverse: 'OL | 0.003 | OL' }));
  say(
    diodeInput({
      minusForward: '0.003 | 0.41 | 0.41',
      minusReverse: '0.003 | OL | OL',
      resistance: ['480k | 490k | 200k', '3.8 Ω | 46k | 46.1k'],
    }),
  );
  say(diodeInput({ plusForward: '-0.2 | 0.41 | 0.41' }));
  say(diodeInput({ resistance: ['480k | 490k | 485k', '46k | 45.8k | 46.1k'] }));
  const unmet = [bridgeDiodeFindings, bridgeDiodeSteps]
    .flatMap((one) => Object.keys(one))
    .filter((code) => !met.has(code));
  expect(unmet).toEqual([]);
});
