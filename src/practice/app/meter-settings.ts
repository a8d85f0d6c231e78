import type { Setting } from '../case/setting.ts';
import type { Mode } from '../simulator/measure.ts';

export const modes: readonly Mode[] = ['volts', 'ohms', 'diode', 'milliohms', 'insulation'];

/** Usual test voltages of insulation testers, in volts. */
export const testVoltages: readonly number[] = [100, 250, 500, 1000];

export type Lead = 'red' | 'black';
export type Placed = Partial<Record<Lead, string>>;

/** Settings of all instruments; each keeps its own while another is in use. */
export interface MeterSettings {
  mode: Mode;
  /** Chosen full scale by mode, in ohms or volts; automatic if absent. */
  ranges: Partial<Record<Mode, number>>;
  testVolts: number;
  zeroed: boolean;
  discharge: boolean;
}

export const initialMeterSettings: MeterSettings = {
  mode: 'volts',
  ranges: {},
  testVolts: 250,
  zeroed: false,
  discharge: false,
};

export function settingOf({ mode, ranges, testVolts, zeroed, discharge }: MeterSettings): Setting {
  const range = ranges[mode];
  return {
    ...(range === undefined ? {} : { range }),
    ...(mode === 'insulation' ? { testVolts, discharge } : {}),
    ...(mode === 'ohms' && zeroed ? { zeroed } : {}),
  };
}
