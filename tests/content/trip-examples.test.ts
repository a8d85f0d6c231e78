import { expect, test } from 'vitest';
import { atMotor, throughCable } from '../../content/articles/trip/motor-failure.example.ts';
import { dcMinus, dcPlus } from '../../content/articles/trip/output-stage-failure.example.ts';
import { throughMotor, throughShort } from '../../content/articles/trip/what-the-drive-means.example.ts';
import { assessBridge } from '../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessWinding } from '../../src/calculators/winding/rule/assess.ts';
import { mapPhases } from '../../src/kernel/electrics/phases.ts';
import { ohms, volts } from '../../src/kernel/reading/reading.ts';
import { found } from '../support/found.ts';

// Compares the words of the worked examples of section "trip" with the calculators.

const pairs = ({ UV, VW, WU }: typeof atMotor) => ({ UV: ohms(UV), VW: ohms(VW), WU: ohms(WU) });

test('output stage: the DC+ rail agrees, and position 4 alone is suspect', () => {
  const { verdict, findings } = assessBridge({
    busVoltage: volts(0.02),
    motorLeads: 'off',
    dcPlus: mapPhases(dcPlus, (value) => ohms(value)),
    dcMinus: mapPhases(dcMinus, (value) => ohms(value)),
  });
  expect(verdict).toBe('no-go');
  expect(suspectPositions(findings)).toEqual(['minusU']);
});

test('motor: the winding fails through the cable and at the motor, and V is the low one of a star', () => {
  for (const readings of [throughCable, atMotor]) {
    const { verdict, findings } = assessWinding({ readings: pairs(readings), leads: 'four', connection: 'star' });
    expect(verdict).toBe('no-go');
    expect(found(findings, 'winding-suspect-star')).toMatchObject({ name: 'V', side: 'low' });
  }
});

test('rise of the current: dI/dt = V/L, 30 A at 560 V through 8 mH and through 10 µH, worked by hand', () => {
  expect([throughMotor, throughShort]).toEqual(['430\u00a0µs', '0.54\u00a0µs']);
});
