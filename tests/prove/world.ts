import { limitValue } from '../../src/calc/index.ts';
import { type AxisState, asFound } from '../../src/simulator/axis-state.ts';
import { axisFalls } from '../../src/simulator/brake.ts';
import { afterWaiting, switchedOn } from '../../src/simulator/discharge.ts';
import type { FaultedAxis } from '../../src/simulator/faulted-axis.ts';
import type { Instruments } from '../../src/simulator/instruments.ts';
import { type HookUp, type Measurement, type Mode, measure } from '../../src/simulator/measure.ts';
import { between, type Random } from '../../src/simulator/random.ts';
import { type Reach, tripsNow } from '../../src/simulator/trip.ts';

/** What a warning label asks, in seconds; the bus of the simulator needs no longer. */
const labelSeconds = 600;

/**
 * The machine under the hands of the robot. It obeys every order and writes down each that a careful person would have
 * refused: these rules are the world's own and share no code with the guide.
 */
export class World {
  readonly unsafe: string[] = [];
  state: AxisState;
  private busKnownLow = false;
  private failedMeasurement = false;
  readonly axis: FaultedAxis;
  readonly instruments: Instruments;
  readonly random: Random;

  constructor(axis: FaultedAxis, instruments: Instruments, windingCelsius: number, airCelsius: number, random: Random) {
    this.axis = axis;
    this.instruments = instruments;
    this.random = random;
    this.state = switchedOn(axis, asFound(windingCelsius, airCelsius));
  }

  lockOut(): Measurement {
    this.state = afterWaiting(this.axis, { ...this.state, supply: false, enabled: false }, labelSeconds);
    const reading = this.read('volts', { red: 'DC+', black: 'DC-' });
    this.busKnownLow = reading.reading.kind === 'value' && reading.reading.value <= limitValue('touch-voltage');
    return reading;
  }

  /** Hands on conductors: leads, connectors, measuring tips. */
  change(to: (state: AxisState) => AxisState): void {
    this.checkHands();
    this.state = to(this.state);
  }

  /** Looks and feels, and changes nothing. */
  handsOn(): void {
    this.checkHands();
  }

  measure(mode: Mode, red: string, black: string, zeroed = false): Measurement {
    this.checkHands();
    const { driveEnd } = this.state;
    if (mode === 'insulation' && (driveEnd.U || driveEnd.V || driveEnd.W)) this.note('insulation tester on the drive');
    return this.read(mode, { red, black }, zeroed);
  }

  /** Switches on and goes as far as `reach`; true if the drive trips. */
  retry(reach: Reach): boolean {
    const { driveEnd, axisSupported } = this.state;
    if (this.axis.seen.drive !== 'nothing') this.note('damaged drive powered');
    if (reach !== 'power' && this.axis.parameters.gravityLoaded && !axisSupported) {
      this.note('axis that can fall enabled without support');
    }
    if (driveEnd.U && reach !== 'power' && this.failedMeasurement) this.note('powered after a measurement that failed');
    if (driveEnd.U && !driveEnd.PE) this.note('powered without protective conductor');
    this.state = switchedOn(this.axis, { ...this.state, enabled: reach !== 'power' });
    this.busKnownLow = false;
    const tripped = tripsNow(this.axis, this.state, reach, this.random);
    if (axisFalls(this.axis.parameters, this.state, tripped)) this.note('the axis falls');
    return tripped;
  }

  support(): void {
    this.state = { ...this.state, axisSupported: true };
  }

  /** The winding and all else come to the temperature of the room. */
  reachRoomTemperature(): void {
    const celsius = between(this.random, 18, 23);
    this.state = { ...this.state, windingCelsius: celsius, airCelsius: celsius };
  }

  /** Water between mated pins is gone; what is inside a part stays. */
  dryConnectors(): void {
    this.checkHands();
    this.axis.leaks = this.axis.leaks.filter(({ a }) => !a.startsWith('mated.'));
  }

  noteFailure(): void {
    this.failedMeasurement = true;
  }

  private read(mode: Mode, leads: HookUp, zeroed = false): Measurement {
    return measure(this.axis, this.state, this.instruments, mode, leads, this.random, { zeroed });
  }

  private checkHands(): void {
    if (this.state.supply) this.note('hands on conductors with power on');
    else if (!this.busKnownLow) this.note('hands on conductors without a measured bus');
  }

  private note(what: string): void {
    this.unsafe.push(what);
  }
}
