import type { Action, PlainAct } from '../../../../src/practice/case/action.ts';
import { windingTemperatures } from '../../../../src/practice/case/case-code.ts';
import { CaseRun } from '../../../../src/practice/case/case-run.ts';
import type { Setting } from '../../../../src/practice/case/setting.ts';
import type { Mode } from '../../../../src/practice/simulator/measure.ts';

export const windingCelsius = windingTemperatures[6] as number;

export const act = (...acts: PlainAct[]): Action[] => acts.map((one): Action => ({ act: one }));

export const measure = (mode: Mode, red: string, black: string, setting: Setting = {}): Action => ({
  act: 'measure',
  mode,
  red,
  black,
  setting,
});

export const busMeasured = measure('volts', 'DC+', 'DC-');
export const leadsOff: Action = { act: 'join', joint: 'leads', on: false };
export const peOff: Action = { act: 'join', joint: 'lead-PE', on: false };
export const unplugged: Action = { act: 'join', joint: 'motor-plug', on: false };

/** Everything that makes it safe to touch: supported, off, locked, waited, meter proved, bus measured. */
export const safe: Action[] = [...act('support', 'switch-off', 'lock-out', 'wait-label', 'prove-meter'), busMeasured];

export const insulation = (red: string, black: string): Action =>
  measure('insulation', red, black, { testVolts: 500, discharge: true });

const withAxis = (gravityLoaded: boolean, fault: string): number => {
  for (let seed = 0; ; seed += 1) {
    const run = new CaseRun({ fault, seed, windingCelsius });
    const { axis } = run.machine;
    const unseen = Object.values(axis.seen).every((damage) => damage === 'nothing');
    // A machine that has power before it trips, if the fault allows that.
    const early = axis.moment === 'control-off' && !fault.startsWith('feedback');
    if (axis.parameters.gravityLoaded === gravityLoaded && unseen && !early) return seed;
  }
};

/** A run on an axis with this fault and no visible damage. */
export function run(fault: string, actions: readonly Action[], gravityLoaded = true): CaseRun {
  return new CaseRun({ fault, seed: withAxis(gravityLoaded, fault), windingCelsius }, actions);
}
