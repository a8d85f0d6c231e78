import { limitValue } from '../../kernel/limits.ts';
import { between, type Random } from '../../kernel/random.ts';
import type { Cause } from '../../kernel/vocabulary.ts';
import { Machine } from '../case/machine.ts';
import type { Setting } from '../case/setting.ts';
import { withoutFault } from '../simulator/faulted-axis.ts';
import { drawFieldInstruments } from '../simulator/instruments.ts';
import type { Measurement, Mode } from '../simulator/measure.ts';
import type { Reach } from '../simulator/trip.ts';
import { drawAxisOfField } from './field-axis.ts';
import { meets } from './field-mix.ts';
import { drawSlips, type Slips } from './slips.ts';

/** A motor that has run until it trips hot, in °C: typical, project judgement. */
const hotWinding: [number, number] = [65, 85];

/** How long a hasty person holds the tips, in seconds: about as long at each terminal. */
const hastySeconds: [number, number] = [3, 12];
const hastySpread: [number, number] = [0.9, 1.1];

/** The machine as this person handles it: slips of the hands happen here, so that each reading is the real one. */
export class FieldMachine extends Machine {
  readonly slips: Slips;
  private readonly holds: number;

  constructor(slips: Slips, ...machine: ConstructorParameters<typeof Machine>) {
    super(...machine);
    this.slips = slips;
    this.holds = between(this.random, ...hastySeconds);
  }

  override sound(): FieldMachine {
    const { slips, axis, instruments, state, random } = this;
    const machine = new FieldMachine(
      slips,
      withoutFault(axis),
      instruments,
      state.windingCelsius,
      state.airCelsius,
      random,
    );
    machine.state = state;
    return machine;
  }

  override get knowsSound(): boolean {
    return this.slips.soundKnown;
  }

  /** A bus that stands after the time on the label is discharged with the maker's resistor, then measured again. */
  override lockOut(): Measurement {
    const waited = super.lockOut();
    const { reading } = waited;
    if (reading.kind === 'value' && Math.abs(reading.value) < limitValue('touch-voltage')) return waited;
    const { lowerBusVolts: _, ...state } = this.state;
    this.state = { ...state, busVolts: 0 };
    return this.measure('volts', 'DC+', 'DC-');
  }

  override measure(mode: Mode, red: string, black: string, setting: Setting = {}): Measurement {
    const atBus = (mode === 'ohms' || mode === 'diode') && (isRail(red) || isRail(black));
    const [tip, other] = atBus && this.slips.leadsExchanged ? [black, red] : [red, black];
    const hasty = atBus && this.slips.firstReadingTooSoon && (red === 'DC+' || black === 'DC+');
    const held = hasty ? { ...setting, heldSeconds: this.holds * between(this.random, ...hastySpread) } : setting;
    return super.measure(mode, tip, other, held);
  }

  /** What a change has left wrong is put right; false if that is not the cause. */
  putRight(): boolean {
    const { axis } = this;
    if (!axis.changed || !leftByChange.includes(axis.cause)) return false;
    axis.trips = axis.trips.map((trip) => ({ ...trip, every: 0 }));
    return true;
  }

  /** An axis that trips hot is run until it is. */
  override power(reach: Reach): boolean {
    const runsWarm = reach === 'all' && this.axis.moment === 'when-hot';
    if (runsWarm) this.state = { ...this.state, windingCelsius: between(this.random, ...hotWinding) };
    return super.power(reach);
  }
}

/** What a comparison with the state before the change can show. */
const leftByChange: readonly Cause[] = ['commutation', 'tuning'];

const isRail = (node: string) => node === 'DC+' || node === 'DC-';

/** An axis of the field with this fault and the person who works on it; every figure is drawn. Throws for an unknown fault. */
export function drawFieldMachine(fault: string, random: Random): FieldMachine {
  const axis = drawAxisOfField(fault, random);
  // Who comes at once finds it hot; many come the next morning.
  const stillHot = axis.moment === 'when-hot' && meets(random, 'still-hot');
  const winding = stillHot ? between(random, ...hotWinding) : between(random, 5, 80);
  const air = Math.min(winding, between(random, 10, 35));
  return new FieldMachine(drawSlips(axis, random), axis, drawFieldInstruments(random), winding, air, random);
}
