import { phases } from '../../kernel/electrics/phases.ts';
import { limitValue } from '../../kernel/limits.ts';
import type { AxisState } from '../simulator/axis-state.ts';
import type { HookUp, Measurement, Mode } from '../simulator/measure.ts';

const isPhase = (node: string) => phases.some((phase) => node.endsWith(`.${phase}`));
const isEarth = (node: string) => node === 'ground' || /\.(PE|screen|frame)$/.test(node);
const isRail = (node: string) => node === 'DC+' || node === 'DC-';

/**
 * Whether a reading alone shows that something is bad: insulation below the limit after a trip, or an output terminal
 * shorted to a rail. Undefined if the hook-up can't show it. Verdicts are left to the calculators. `plusOnRed`: which tip
 * is positive. From terminal to DC+ or from DC− to terminal a sound diode conducts and reads low.
 */
export function readingFails(
  state: AxisState,
  mode: Mode,
  { red, black }: HookUp,
  shown: Measurement,
  plusOnRed = true,
): boolean | undefined {
  const leadsOff = phases.every((phase) => !state.driveEnd[phase]);
  const both = (one: (node: string) => boolean, other: (node: string) => boolean) =>
    (one(red) && other(black)) || (one(black) && other(red));
  const { reading } = shown;
  if (!leadsOff || reading.kind === 'missing' || reading.kind === 'under') return undefined;
  if (mode === 'insulation' && both(isPhase, isEarth)) {
    return reading.kind === 'value' && reading.value < limitValue('after-trip-point');
  }
  if (mode === 'ohms' && both(isPhase, isRail)) {
    const positive = plusOnRed ? red : black;
    const blocks = [red, black].includes('DC+') ? positive === 'DC+' : positive !== 'DC-';
    if (!blocks) return undefined;
    return reading.kind === 'value' && reading.value <= limitValue('bridge-short');
  }
  return undefined;
}

export function isBus({ red, black }: HookUp): boolean {
  return [red, black].sort().join() === 'DC+,DC-';
}

/** Whether a voltage reading is below the touch voltage. */
export function showsDead({ reading }: Measurement): boolean {
  return reading.kind === 'value' && Math.abs(reading.value) < limitValue('touch-voltage');
}

/** The hook-ups whose last reading failed. */
export class FailedReadings {
  private readonly hookUps = new Set<string>();

  get any(): boolean {
    return this.hookUps.size > 0;
  }

  /** `fails`: of `readingFails`; a reading that can't show it changes nothing. */
  remember(mode: Mode, { red, black }: HookUp, fails: boolean | undefined): void {
    const hookUp = [mode, ...[red, black].sort()].join(' ');
    if (fails === true) this.hookUps.add(hookUp);
    if (fails === false) this.hookUps.delete(hookUp);
  }

  /** A verdict of several readings failed. */
  note(): void {
    this.hookUps.add('verdict');
  }
}
