import { between, type Random } from '../../kernel/random.ts';
import { type AxisState, asFound } from '../simulator/axis-state.ts';
import { anyCanFall, axisFalls } from '../simulator/brake.ts';
import { afterWaiting, switchedOn } from '../simulator/discharge.ts';
import { type FaultedAxis, withoutFault } from '../simulator/faulted-axis.ts';
import type { Instruments } from '../simulator/instruments.ts';
import { type HookUp, type Measurement, type Mode, measure } from '../simulator/measure.ts';
import { type Reach, type Trip, tripOf } from '../simulator/trip.ts';
import { brokenDown } from './broken-switch.ts';
import { FailedReadings, isBus, readingFails, showsDead } from './reading-fails.ts';
import { heldFor, type Setting, withSetting } from './setting.ts';
import { type Situation, type Unsafe, unsafeToMeasure, unsafeToPower, unsafeToTouch } from './unsafe-acts.ts';

/** The waiting time on the drive's label, in seconds; the bus of the simulator needs no longer. */
export const labelSeconds = 600;

/**
 * The practice machine that a person or the robot works on. It does whatever is asked and records every act that a
 * careful person would have refused. The rules for that are in unsafe-acts.ts and share no code with the guide.
 */
export class Machine implements Situation {
  readonly unsafe: Unsafe[] = [];
  state: AxisState;
  lockedOut = false;
  meterProved = false;
  busKnownLow = false;
  windingCharged = false;
  /** The trip has not been reset: the drive does not enable. */
  tripped = true;
  /** What stopped the drive at the last try; undefined if it ran. */
  lastTrip: Trip | undefined;
  /** An insulation tester has damaged the drive; that is not part of the fault. */
  hurtDrive = false;
  readonly axis: FaultedAxis;
  readonly instruments: Instruments;
  readonly random: Random;
  private readonly failures = new FailedReadings();
  private tripsUnchanged = 0;
  /** A reading in time has left a charge on the bus: later readings take their time too, so that it can go. */
  private busCharged = false;

  constructor(axis: FaultedAxis, instruments: Instruments, windingCelsius: number, airCelsius: number, random: Random) {
    this.axis = axis;
    this.instruments = instruments;
    this.random = random;
    this.state = switchedOn(axis, asFound(windingCelsius, airCelsius));
  }

  /** The same axis without its fault, as it stands now: what an earlier record or a sound sister would show this person. */
  sound(): Machine {
    const { axis, instruments, state, random } = this;
    const machine = new Machine(withoutFault(axis), instruments, state.windingCelsius, state.airCelsius, random);
    machine.state = state;
    return machine;
  }

  /** Readings of this axis from before the trip, or of a sound one of the same kind, are at hand. */
  get knowsSound(): boolean {
    return true;
  }

  get failed(): boolean {
    return this.failures.any;
  }

  switchOff(): void {
    this.state = { ...this.state, supply: false, enabled: false };
    this.tripped = false;
  }

  wait(seconds: number): void {
    this.state = afterWaiting(this.axis, this.state, seconds);
  }

  /** A whole lockout: switches off, locks, waits, proves the meter and measures the bus. */
  lockOut(): Measurement {
    this.switchOff();
    this.lockedOut = true;
    this.wait(labelSeconds);
    this.meterProved = true;
    return this.measure('volts', 'DC+', 'DC-');
  }

  /** Changes leads or connectors, with hands on conductors. */
  change(to: (state: AxisState) => AxisState): void {
    this.handsOn();
    this.state = to(this.state);
  }

  /** Looks and feels without changing anything. */
  handsOn(): void {
    this.tripsUnchanged = 0;
    this.note(unsafeToTouch(this));
    // Once per charge: touching it discharges it.
    this.windingCharged = false;
  }

  measure(mode: Mode, red: string, black: string, setting: Setting = {}): Measurement {
    const leads = { red, black };
    const instruments = withSetting(this.instruments, mode, setting);
    const shown = measure(this.axis, this.state, instruments, mode, leads, this.random, {
      zeroed: setting.zeroed === true,
      ...heldFor(setting, this.busCharged),
    });
    if (shown.bus) {
      this.busCharged = true;
      this.state = { ...this.state, ...shown.bus };
    }
    this.note(unsafeToMeasure(this, mode, leads, shown.voltsPresent, instruments.insulation.volts));
    if (mode !== 'volts') this.tripsUnchanged = 0;
    this.remember(mode, leads, shown, setting);
    if (mode === 'insulation') this.hurt(leads);
    return shown;
  }

  /**
   * Takes the lock off, switches on and does what `reach` says; true if the drive trips. `oneMore`: another try of one trial,
   * whose number was decided before it.
   */
  retry(reach: Reach, oneMore = false): boolean {
    this.lockedOut = false;
    if (oneMore) {
      this.switchOff();
      this.tripsUnchanged = 0;
    }
    return this.power(reach);
  }

  /** Switches on, and enables if `reach` includes that; true if the drive trips. */
  power(reach: Reach): boolean {
    this.note(unsafeToPower(this, reach));
    this.state = switchedOn(this.axis, { ...this.state, enabled: reach !== 'power' });
    this.busKnownLow = false;
    this.meterProved = false;
    this.busCharged = false;
    this.lastTrip = tripOf(this.axis, this.state, reach, this.random);
    this.tripped = this.lastTrip !== undefined;
    if (axisFalls(this.axis.parameters, this.state, this.tripped)) this.note(['axis-fell']);
    if (this.tripped) {
      if (this.tripsUnchanged > 0) this.note(['tried-again-untested']);
      this.tripsUnchanged += 1;
      this.state = { ...this.state, enabled: false };
    }
    return this.tripped;
  }

  /** Whether an axis can fall whose brake opens with the enable of this drive. */
  get canFall(): boolean {
    return anyCanFall(this.axis.parameters);
  }

  /** What a thermometer shows of the winding, in °C. */
  get shownCelsius(): number {
    return this.state.windingCelsius + this.instruments.thermometerKelvin;
  }

  support(supported = true): void {
    this.state = { ...this.state, axisSupported: supported };
  }

  /** Waits for hours, until everything has the temperature of the room. */
  reachRoomTemperature(): void {
    const celsius = between(this.random, 18, 23);
    this.wait(labelSeconds);
    this.state = { ...this.state, windingCelsius: celsius, airCelsius: celsius };
  }

  /** Removes water between mated pins, but not inside a part. */
  dryConnectors(): void {
    this.handsOn();
    this.axis.leaks = this.axis.leaks.filter(({ a }) => !a.startsWith('mated.'));
  }

  noteFailure(): void {
    this.failures.note();
  }

  private remember(mode: Mode, leads: HookUp, shown: Measurement, { discharge }: Setting): void {
    if (mode === 'volts' && isBus(leads) && !this.state.supply) {
      this.busKnownLow = showsDead(shown) && this.meterProved && this.lockedOut;
    }
    if (mode === 'insulation') this.windingCharged = discharge !== true;
    else if (mode !== 'volts') this.windingCharged = false;
    const plusOnRed = (this.instruments.ohms.ranges[0]?.sourceVolts ?? 0) >= 0;
    this.failures.remember(mode, leads, readingFails(this.state, mode, leads, shown, plusOnRed));
  }

  private hurt(leads: HookUp): void {
    if (this.hurtDrive) return;
    const leak = brokenDown(this.state, leads, this.random);
    if (leak === undefined) return;
    this.hurtDrive = true;
    this.axis.leaks = [...this.axis.leaks, leak];
  }

  private note(unsafe: readonly Unsafe[]): void {
    this.unsafe.push(...unsafe);
  }
}
