import { limitValue } from '../../kernel/limits.ts';
import { type AxisState, asFound } from '../simulator/axis-state.ts';
import { axisFalls } from '../simulator/brake.ts';
import { afterWaiting, switchedOn } from '../simulator/discharge.ts';
import type { FaultedAxis } from '../simulator/faulted-axis.ts';
import type { Instruments } from '../simulator/instruments.ts';
import { type HookUp, type Measurement, type Mode, measure } from '../simulator/measure.ts';
import { between, type Random } from '../simulator/random.ts';
import { type Reach, tripsNow } from '../simulator/trip.ts';
import { failing } from './failing.ts';
import { drivePhase, type Situation, type Unsafe, unsafeToMeasure, unsafeToPower, unsafeToTouch } from './judge.ts';
import { type Setting, withSetting } from './setting.ts';

/** What a warning label asks, in seconds; the bus of the simulator needs no longer. */
export const labelSeconds = 600;

/** What a tester leaves of a switch that its voltage has broken down, in ohms: typical, project judgement. */
const brokenDown: [number, number] = [2e3, 20e3];

/**
 * The machine under the hands of a person or of the robot. It obeys every order and writes down each that a careful
 * person would have refused: the rules are those of judge.ts, and share no code with the guide.
 */
export class World implements Situation {
  readonly unsafe: Unsafe[] = [];
  state: AxisState;
  lockedOut = false;
  meterProved = false;
  busKnownLow = false;
  windingCharged = false;
  /** The trip stands: the drive does not enable. */
  tripped = true;
  /** The drive has been hurt by an insulation tester: bad now, and no part of the fault. */
  hurtDrive = false;
  readonly axis: FaultedAxis;
  readonly instruments: Instruments;
  readonly random: Random;
  private readonly failingHookUps = new Set<string>();
  private tripsUnchanged = 0;

  constructor(axis: FaultedAxis, instruments: Instruments, windingCelsius: number, airCelsius: number, random: Random) {
    this.axis = axis;
    this.instruments = instruments;
    this.random = random;
    this.state = switchedOn(axis, asFound(windingCelsius, airCelsius));
  }

  get failed(): boolean {
    return this.failingHookUps.size > 0;
  }

  switchOff(): void {
    this.state = { ...this.state, supply: false, enabled: false };
    this.tripped = false;
  }

  wait(seconds: number): void {
    this.state = afterWaiting(this.axis, this.state, seconds);
  }

  /** Switches off, locks, waits, proves the meter and measures the bus: the whole of a lockout, in its order. */
  lockOut(): Measurement {
    this.switchOff();
    this.lockedOut = true;
    this.wait(labelSeconds);
    this.meterProved = true;
    return this.measure('volts', 'DC+', 'DC-');
  }

  /** Hands on conductors: leads, connectors. */
  change(to: (state: AxisState) => AxisState): void {
    this.handsOn();
    this.state = to(this.state);
  }

  /** Looks and feels, and changes nothing. */
  handsOn(): void {
    this.tripsUnchanged = 0;
    this.note(unsafeToTouch(this));
    // Once per charge: what has been touched has been discharged, by a person.
    this.windingCharged = false;
  }

  measure(mode: Mode, red: string, black: string, setting: Setting = {}): Measurement {
    const leads = { red, black };
    const instruments = withSetting(this.instruments, mode, setting);
    const shown = measure(this.axis, this.state, instruments, mode, leads, this.random, {
      zeroed: setting.zeroed === true,
    });
    this.note(unsafeToMeasure(this, mode, leads, shown.voltsPresent, instruments.insulation.volts));
    if (mode !== 'volts') this.tripsUnchanged = 0;
    this.remember(mode, leads, shown, setting);
    if (mode === 'insulation') this.hurt(leads);
    return shown;
  }

  /** Takes the lock off, switches on and goes as far as `reach`; true if the drive trips. */
  retry(reach: Reach): boolean {
    this.lockedOut = false;
    return this.power(reach);
  }

  /** Power, and the enable where `reach` goes that far; true if the drive trips. */
  power(reach: Reach): boolean {
    this.note(unsafeToPower(this, reach));
    this.state = switchedOn(this.axis, { ...this.state, enabled: reach !== 'power' });
    this.busKnownLow = false;
    this.meterProved = false;
    this.tripped = tripsNow(this.axis, this.state, reach, this.random);
    if (axisFalls(this.axis.parameters, this.state, this.tripped)) this.note(['axis-fell']);
    if (this.tripped) {
      if (this.tripsUnchanged > 0) this.note(['tried-again-untested']);
      this.tripsUnchanged += 1;
      this.state = { ...this.state, enabled: false };
    }
    return this.tripped;
  }

  support(supported = true): void {
    this.state = { ...this.state, axisSupported: supported };
  }

  /** The winding and all else come to the temperature of the room; it takes hours. */
  reachRoomTemperature(): void {
    const celsius = between(this.random, 18, 23);
    this.wait(labelSeconds);
    this.state = { ...this.state, windingCelsius: celsius, airCelsius: celsius };
  }

  /** Water between mated pins is gone; what is inside a part stays. */
  dryConnectors(): void {
    this.handsOn();
    this.axis.leaks = this.axis.leaks.filter(({ a }) => !a.startsWith('mated.'));
  }

  noteFailure(): void {
    this.failingHookUps.add('verdict');
  }

  private remember(mode: Mode, leads: HookUp, shown: Measurement, { discharge }: Setting): void {
    if (mode === 'volts' && isBus(leads) && !this.state.supply) {
      const { reading } = shown;
      const low = reading.kind === 'value' && Math.abs(reading.value) < limitValue('touch-voltage');
      this.busKnownLow = low && this.meterProved && this.lockedOut;
    }
    if (mode === 'insulation') this.windingCharged = discharge !== true;
    else if (mode !== 'volts') this.windingCharged = false;
    const fails = failing(this.state, mode, leads, shown);
    const hookUp = [mode, ...[leads.red, leads.black].sort()].join(' ');
    if (fails === true) this.failingHookUps.add(hookUp);
    if (fails === false) this.failingHookUps.delete(hookUp);
  }

  /** A drive's switches are not made for the voltage of a tester: the one at the lead breaks down. */
  private hurt(leads: HookUp): void {
    const phase = drivePhase(this.state, leads);
    if (phase === undefined || this.hurtDrive) return;
    this.hurtDrive = true;
    this.axis.leaks = [
      ...this.axis.leaks,
      { a: 'DC+', b: `drive.${phase}`, ohms: between(this.random, ...brokenDown) },
    ];
  }

  private note(unsafe: readonly Unsafe[]): void {
    this.unsafe.push(...unsafe);
  }
}

function isBus({ red, black }: HookUp): boolean {
  return [red, black].sort().join() === 'DC+,DC-';
}
