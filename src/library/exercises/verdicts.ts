import { assessBridge } from '../../calculators/bridge/rule/assess.ts';
import { assessInsulation } from '../../calculators/insulation/rule/assess.ts';
import { judgeDischarge } from '../../kernel/assessment/bus-discharge.ts';
import type { Occasion } from '../../kernel/assessment/winding-insulation.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import { type Compute, type ExerciseValue, wordValue } from './exercise-value.ts';

const readings = (values: ExerciseValue[]): Reading[] => values.map(({ reading }) => reading);
const phasesOf = ([U = missing, V = missing, W = missing]: Reading[]) => ({ U, V, W });

function insulation(occasion: Occasion): Compute {
  return (...values) => {
    const [U, V, W, pe = missing, testVoltage = missing, windingTemperature = missing] = readings(values);
    const { verdict } = assessInsulation({
      occasion,
      readings: phasesOf([U ?? missing, V ?? missing, W ?? missing]),
      pe,
      testVoltage,
      windingTemperature,
      ratedVoltage: missing,
      ambient: missing,
      humidity: missing,
      testMinutes: missing,
      machineClass: 'random-wound',
      correction: 'halving',
    });
    return wordValue(verdict);
  };
}

/** Verdicts that a question may compute; the name `-` means a reading that was not taken. */
export const verdicts: Record<string, Compute> = {
  /** DC bus voltage: go, undecided or stop. */
  dischargeVerdict: (bus) => {
    const { severity } = judgeDischarge(bus?.reading ?? missing);
    return wordValue(severity === 'pass' ? 'go' : severity);
  },
  /** DC bus voltage, then U, V, W to DC+, then U, V, W to DC−, leads off. */
  bridgeVerdict: (bus, ...six) => {
    const [a, b, c, ...minus] = readings(six);
    const dcPlus = phasesOf([a ?? missing, b ?? missing, c ?? missing]);
    const input = { busVoltage: bus?.reading ?? missing, motorLeads: 'off' as const, dcPlus, dcMinus: phasesOf(minus) };
    return wordValue(assessBridge(input).verdict);
  },
  /** U, V, W to PE, PE pin to frame, test voltage, winding temperature; halving rule, random-wound. */
  afterTripVerdict: insulation('after-trip'),
  routineVerdict: insulation('routine'),
};
