import { type Phase, phases } from '../../kernel/electrics/phases.ts';
import { limitRange, limitValue } from '../../kernel/limits.ts';
import { type AxisState, idleCores } from '../simulator/axis-state.ts';
import { anyCanFall } from '../simulator/brake.ts';
import type { FaultedAxis } from '../simulator/faulted-axis.ts';
import type { HookUp, Mode } from '../simulator/measure.ts';
import type { Reach } from '../simulator/trip.ts';

/** What a careful person would have refused to do. Each code has one sentence in src/practice/words/unsafe.ts. */
export type Unsafe =
  | 'hands-with-power'
  | 'hands-without-lockout'
  | 'hands-on-charged-bus'
  | 'bus-not-measured'
  | 'meter-not-proved'
  | 'measured-live'
  | 'touched-without-support'
  | 'winding-not-discharged'
  | 'resistance-on-live'
  | 'tester-on-drive'
  | 'test-voltage-too-high'
  | 'damaged-drive-powered'
  | 'enabled-without-support'
  | 'axis-fell'
  | 'powered-after-failure'
  | 'powered-without-pe'
  | 'enabled-without-feedback'
  | 'powered-with-bonds'
  | 'live-open-end'
  | 'bus-on-low-voltage-circuit'
  | 'tried-again-untested';

/** Everything that decides whether the next act is safe. */
export interface Situation {
  readonly axis: FaultedAxis;
  readonly state: AxisState;
  readonly lockedOut: boolean;
  readonly meterProved: boolean;
  /** The bus was measured under this lockout and was below the touch voltage. */
  readonly busKnownLow: boolean;
  /** An insulation tester has charged the winding, and it was not discharged. */
  readonly windingCharged: boolean;
  /** A measurement failed and was not repeated with a better result. */
  readonly failed: boolean;
}

/** Hands, or the tips of leads, on conductors that count as live until they are proven dead. */
export function unsafeToTouch(situation: Situation): Unsafe[] {
  if (situation.state.supply) return ['hands-with-power'];
  const unsafe: Unsafe[] = [...withoutSupport(situation)];
  if (!situation.lockedOut) unsafe.push('hands-without-lockout');
  if (!situation.busKnownLow) unsafe.push(busIsHigh(situation) ? 'hands-on-charged-bus' : 'bus-not-measured');
  if (situation.windingCharged) unsafe.push('winding-not-discharged');
  return unsafe;
}

/** A voltage may be measured before the bus is known to be low, since that proves it; all else needs what hands need. */
export function unsafeToMeasure(
  situation: Situation,
  mode: Mode,
  leads: HookUp,
  voltsPresent: number,
  testVolts: number,
): Unsafe[] {
  const { state, lockedOut, meterProved } = situation;
  if (mode === 'volts') {
    if (state.supply) return ['measured-live'];
    const unsafe: Unsafe[] = [...withoutSupport(situation)];
    if (!lockedOut) unsafe.push('hands-without-lockout');
    if (!meterProved) unsafe.push('meter-not-proved');
    return unsafe;
  }
  const unsafe = unsafeToTouch(situation);
  if (Math.abs(voltsPresent) >= limitValue('touch-voltage')) unsafe.push('resistance-on-live');
  if (mode === 'insulation' && drivePhase(state, leads) !== undefined) unsafe.push('tester-on-drive');
  if (mode === 'insulation' && testVolts > limitRange('test-voltage-below-1000').to) {
    unsafe.push('test-voltage-too-high');
  }
  return unsafe;
}

/** For switching the drive on, and for enabling the axis if `reach` includes that. */
export function unsafeToPower({ axis, state, failed }: Situation, reach: Reach): Unsafe[] {
  const enabled = reach !== 'power';
  const on = phases.filter((phase) => state.driveEnd[phase]);
  const plugged = phases.filter((phase) => state.driveEnd[phase] && state.motorEnd[phase]);
  const feedback = state.feedbackAtDrive && state.feedbackAtDevice;
  const rules: [Unsafe, boolean][] = [
    ['damaged-drive-powered', axis.seen.drive !== 'nothing'],
    ['enabled-without-support', enabled && anyCanFall(axis.parameters) && !state.axisSupported],
    ['powered-after-failure', enabled && on.length > 0 && failed],
    ['powered-without-pe', on.length > 0 && !state.driveEnd.PE],
    ['enabled-without-feedback', enabled && plugged.length > 0 && !feedback],
    ['powered-with-bonds', state.jumpers.length > 0],
    ['bus-on-low-voltage-circuit', enabled && on.length > 0 && reachesIdleCore(axis, state)],
    ['live-open-end', enabled && on.length > 0 && plugged.length < phases.length],
  ];
  return rules.filter(([, holds]) => holds).map(([code]) => code);
}

/** Whether a phase of cable or motor is shorted to a core that belongs to brake or sensor, and is not on the protective bar. */
function reachesIdleCore({ leaks }: FaultedAxis, { idleCores: ends }: AxisState): boolean {
  const idle = (node: string) => idleCores.some((core) => node.endsWith(`.${core}`));
  const phase = (node: string) => phases.some((one) => node.endsWith(`.${one}`));
  return ends !== 'to-pe' && leaks.some(({ a, b }) => (phase(a) && idle(b)) || (idle(a) && phase(b)));
}

/** The phase of the drive that a tester's voltage reaches with these leads, or undefined. */
export function drivePhase(state: AxisState, { red, black }: HookUp): Phase | undefined {
  return reached(state, red) ?? reached(state, black);
}

function reached(state: AxisState, node: string): Phase | undefined {
  if (node === 'DC+' || node === 'DC-') return 'U';
  const phase = phases.find((one) => node.endsWith(`.${one}`));
  if (phase === undefined) return undefined;
  if (node.startsWith('drive.') || (node.startsWith('cable.') && state.driveEnd[phase])) return phase;
  // The windings join the phases: through the motor, a lead that is off reaches those that are on.
  const atMotor = state.motorEnd[phase] || node.startsWith('motor.');
  return atMotor ? phases.find((one) => state.motorEnd[one] && state.driveEnd[one]) : undefined;
}

function withoutSupport({ axis, state }: Situation): Unsafe[] {
  return anyCanFall(axis.parameters) && !state.axisSupported ? ['touched-without-support'] : [];
}

function busIsHigh({ state }: Situation): boolean {
  return Math.abs(state.busVolts) >= limitValue('touch-voltage');
}
