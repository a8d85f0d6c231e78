import type { Action, PlainAct } from '../../../../src/practice/case/action.ts';
import { windingTemperatures } from '../../../../src/practice/case/case-code.ts';
import { Session } from '../../../../src/practice/case/session.ts';
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

/** All that makes it safe to touch: supported, off, locked, waited, meter proved, bus measured. */
export const safe: Action[] = [...act('support', 'switch-off', 'lock-out', 'wait-label', 'prove-meter'), busMeasured];

export const insulation = (red: string, black: string): Action =>
  measure('insulation', red, black, { testVolts: 500, discharge: true });

const withAxis = (gravityLoaded: boolean, fault: string): number => {
  for (let seed = 0; ; seed += 1) {
    const session = new Session({ fault, seed, windingCelsius });
    const { axis } = session.world;
    const unseen = Object.values(axis.seen).every((damage) => damage === 'nothing');
    // One that gets power before it trips, where the fault allows that.
    const early = axis.moment === 'control-off' && !fault.startsWith('feedback');
    if (axis.parameters.gravityLoaded === gravityLoaded && unseen && !early) return seed;
  }
};

/** A session on an axis with this fault, and no damage to see. */
export function session(fault: string, actions: readonly Action[], gravityLoaded = true): Session {
  return new Session({ fault, seed: withAxis(gravityLoaded, fault), windingCelsius }, actions);
}
