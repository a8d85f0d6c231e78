import type { Setting } from '../case/setting.ts';
import type { Mode } from '../simulator/measure.ts';

export const modes: readonly Mode[] = ['volts', 'ohms', 'diode', 'milliohms', 'insulation'];

/** What testers of this kind offer, in volts. */
export const testVoltages: readonly number[] = [100, 250, 500, 1000];

export type Lead = 'red' | 'black';
export type Placed = Partial<Record<Lead, string>>;

/** How the person has set the instruments; each keeps its setting while another is in use. */
export interface Knobs {
  mode: Mode;
  /** By mode; automatic where there is none. */
  ranges: Partial<Record<Mode, number>>;
  testVolts: number;
  zeroed: boolean;
  discharge: boolean;
}

export const startKnobs: Knobs = { mode: 'volts', ranges: {}, testVolts: 250, zeroed: false, discharge: false };

export function settingOf({ mode, ranges, testVolts, zeroed, discharge }: Knobs): Setting {
  const range = ranges[mode];
  return {
    ...(range === undefined ? {} : { range }),
    ...(mode === 'insulation' ? { testVolts, discharge } : {}),
    ...(mode === 'ohms' && zeroed ? { zeroed } : {}),
  };
}
