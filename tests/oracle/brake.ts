import { assessBrake } from '../../src/calculators/brake/rule/assess.ts';
import type { BrakeInput } from '../../src/calculators/brake/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import type { Dice } from './dice.ts';
import { busIsDead, figure, further, hair, instrument, least, lowered, raised, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };

/** Ω/km of IEC 60228, typed once more on purpose. */
const perKilometre: Record<number, number> = { 0.75: 26, 1: 19.5, 1.5: 13.3, 2.5: 7.98 };

const isolation = ['coresApart', 'toPhases', 'toPe'] as const;

function make(dice: Dice): BrakeInput {
  const volts = dice.pick([24, 24, 24, 48, 96]);
  const watts = dice.pick([8, 12, 18, 40]);
  const plate = (volts * volts) / watts;
  const celsius = dice.pick([20, 20, 45, 80]);
  const coil = plate * (1 + 0.00393 * (celsius - 20)) * dice.pick([0.3, 0.8, 0.92, 1, 1, 1, 1.05, 1.2, 1.6]);
  const metres = dice.pick([5, 20, 60]);
  const section = dice.pick([0.75, 1, 1.5]);
  const loop = (2 * metres * (perKilometre[section] ?? 0)) / 1000;
  const through = dice.chance(0.5);
  const atPlug = dice.chance(0.8);
  const feed = volts * dice.pick([0.5, 0.85, 0.95, 1, 1, 1.02, 1.3]);
  const high = () => (dice.chance(0.9) ? 2e7 : dice.pick([1e3, 9.9e5, 1e6]));
  const tell = dice.chance(0.7);
  return {
    axis: dice.chance(0.93) ? 'held' : dice.pick(['not-held', 'not-stated'] as const),
    busVoltage: reading(dice, () => dice.pick([0, 0.02, 0.02, 0.05, 0.05, 0.1, 0.1, 0.11, 49, 300]), 'V'),
    leads: dice.chance(0.93) ? 'off' : dice.pick(['connected', 'not-stated'] as const),
    circuit: dice.chance(0.93) ? 'plain' : dice.pick(['electronics', 'not-stated'] as const),
    ratedVolts: reading(dice, () => volts, 'V'),
    ratedWatts: reading(dice, () => watts, 'W'),
    ratedOhms: dice.chance(0.2) ? reading(dice, () => plate * dice.pick([1, 1, 1.05, 2]), 'Ω') : missing,
    coilTemperature: reading(dice, () => celsius, '°C'),
    atMotor: dice.chance(0.8) ? reading(dice, () => coil, 'Ω') : missing,
    atDrive: through ? reading(dice, () => coil + loop * dice.pick([0, 1, 1, 3]), 'Ω') : missing,
    coresApart: reading(dice, high, 'Ω'),
    toPhases: reading(dice, high, 'Ω'),
    toPe: reading(dice, high, 'Ω'),
    plugVolts: atPlug ? reading(dice, () => feed, 'V') : missing,
    sourceVolts: dice.chance(0.5) ? reading(dice, () => feed * 1.02, 'V') : missing,
    supplyTolerance: dice.chance(0.3) ? reading(dice, () => dice.pick([5, 10, 20, 80]), '%') : missing,
    cable: tell
      ? { metres: reading(dice, () => metres, 'm'), squareMillimetres: section }
      : { metres: missing, ...(dice.chance(0.2) && { squareMillimetres: 3 }) },
    release: dice.chance(0.85) ? 'opens' : dice.pick(['drags', 'shut', 'not-tried'] as const),
    ...(dice.chance(0.3) && { instrument: instrument(dice, [2e7]) }),
  };
}

/**
 * Held, bus dead, leads off, plain, opens; the coil within a tenth of its plate at 20 °C, by 0.393 % in a kelvin; a megohm to all else; the
 * voltage within a tenth, or up to a quarter if the manual allows it. All typed once more.
 */
function mayGo(input: BrakeInput): boolean {
  const { axis, circuit, release, ratedVolts, ratedWatts, ratedOhms, coilTemperature, atMotor, atDrive } = input;
  if (!busIsDead(input.busVoltage) || input.leads !== 'off') return false;
  if (axis !== 'held' || circuit !== 'plain' || release !== 'opens') return false;
  if (!isolation.every((one) => least(input[one], input.instrument) >= 1e6)) return false;
  const volts = figure(ratedVolts);
  const plate = figure(ratedOhms) > 0 ? figure(ratedOhms) : volts ** 2 / figure(ratedWatts);
  const celsius = figure(coilTemperature);
  if (!(volts > 0 && plate > 0 && celsius >= -20 && celsius <= 180)) return false;
  const to20 = (234.5 + 20) / (234.5 + celsius);
  const near = (ohms: number) => ohms * to20 <= plate * 1.1 * hair && ohms * to20 >= (plate * 0.9) / hair;
  const direct = span(atMotor, input.instrument);
  const through = span(atDrive, input.instrument);
  if (atMotor.kind === 'value' ? !(direct && near(direct.lo) && near(direct.hi)) : !(through && through.hi > 0)) {
    return false;
  }
  if (atMotor.kind !== 'value' && !(figure(input.cable.metres) > 0)) return false;
  // Cores that may touch: a tenth less than the coil itself.
  const mayTouch = direct && through && through.lo < (direct.lo * 0.9) / hair;
  if (atMotor.kind === 'value' && atDrive.kind !== 'missing' && (through === undefined || mayTouch)) return false;
  const most = Math.min(25, figure(input.supplyTolerance) >= 0 ? figure(input.supplyTolerance) : 10) / 100;
  const plug = span(input.plugVolts.kind === 'missing' ? input.sourceVolts : input.plugVolts);
  return plug !== undefined && plug.lo >= (volts * (1 - most)) / hair && plug.lo <= volts * (1 + most) * 1.4;
}

/** A coil further from its plate, a voltage further from the rated one, or cores with more; each where nothing else reads it. */
function ofCircuit(input: BrakeInput, dice: Dice, factor: number): BrakeInput | undefined {
  const { ratedVolts, ratedWatts, ratedOhms, coilTemperature, atMotor, atDrive, plugVolts, sourceVolts } = input;
  const what = dice.pick(['coil', 'volts', 'cores'] as const);
  if (what === 'volts') {
    return sourceVolts.kind === 'missing'
      ? having(input, 'plugVolts', further(plugVolts, figure(ratedVolts), factor))
      : undefined;
  }
  if (what === 'cores') {
    return atMotor.kind === 'value' && figure(atDrive) >= atMotor.value * 1.1
      ? having(input, 'atDrive', raised(atDrive, factor))
      : undefined;
  }
  if (atDrive.kind !== 'missing' || coilTemperature.kind !== 'value') return undefined;
  const plate = figure(ratedOhms) > 0 ? figure(ratedOhms) : figure(ratedVolts) ** 2 / figure(ratedWatts);
  return having(input, 'atMotor', further(atMotor, (plate * (234.5 + coilTemperature.value)) / 254.5, factor));
}

export const brake: Subject<BrakeInput> = {
  name: 'brake',
  signed: ['busVoltage'],
  make,
  verdict: (input) => assessBrake(input).verdict,
  mayGo,
  lacking: (input, dice) => {
    const what = dice.pick([
      'axis',
      'leads',
      'busVoltage',
      'circuit',
      'release',
      'coil',
      'coilTemperature',
      'volts',
      ...isolation,
    ] as const);
    if (what === 'axis' || what === 'circuit' || what === 'leads') return having(input, what, 'not-stated');
    if (what === 'release') return having(input, 'release', 'not-tried');
    if (what === 'coil') return { ...input, atMotor: missing, atDrive: missing };
    if (what === 'volts') return { ...input, plugVolts: missing, sourceVolts: missing };
    return having(input, what, missing);
  },
  worse: (input, dice) => {
    if (dice.chance(0.3)) return having(input, 'release', dice.pick(['drags', 'shut'] as const));
    if (input.instrument?.upperLimit !== undefined) return undefined;
    const factor = dice.pick([1.01, 1.3, 2, 100, 1e6]);
    if (dice.chance(0.4)) return ofCircuit(input, dice, factor);
    const field = dice.pick(isolation);
    return having(input, field, lowered(input[field], factor));
  },
};
