import { between, betweenDecades, chance, oneOf, type Random } from '../random.ts';

/** A servo axis as it moves: motor, drive and load, in SI units. */
export interface AxisInMotion {
  /** Of one phase of a star, in Ω and H. */
  resistance: number;
  inductance: number;
  polePairs: number;
  /** Flux of the magnets, peak per phase, in V·s. */
  flux: number;
  /** Of motor and load together, in kg·m². */
  inertia: number;
  /** Coulomb friction and weight, in N·m. */
  friction: number;
  bus: number;
  /** Of the supply with its rectifier, seen from the bus: Ω; and the capacitor, F. */
  supplyResistance: number;
  capacitance: number;
  /** Peak current that the drive controls to, and the level at which it trips, in A. */
  peakCurrent: number;
  tripCurrent: number;
  /** Of one control step, in s. */
  controlSeconds: number;
  /** Bandwidths in rad/s. */
  currentBandwidth: number;
  speedBandwidth: number;
  /** Speed at which the axis travels, in rad/s of the shaft, and the time to reach it, in s. */
  travelSpeed: number;
  rampSeconds: number;
  /** The drive stores the currents that tripped it; otherwise its next sample finds them gone. */
  keepsTripValue: boolean;
}

/** Draws a servo motor of the usual sizes, with a drive and a load that fit it. */
export function drawAxisInMotion(random: Random): AxisInMotion {
  const bus = oneOf(random, [310, 540, 565, 650]) * between(random, 0.95, 1.05);
  const rated = betweenDecades(random, 1.5, 30);
  const peakCurrent = rated * Math.SQRT2 * between(random, 2, 3.5);
  const polePairs = oneOf(random, [3, 4, 4, 5]);
  const topSpeed = between(random, 250, 520);
  const flux = (0.85 * bus) / Math.sqrt(3) / (polePairs * topSpeed);
  // Voltage drop across the inductance at rated current and speed: 10 to 30 per cent of the phase voltage.
  const inductance = (between(random, 0.1, 0.3) * bus) / Math.sqrt(3) / (polePairs * topSpeed * rated * Math.SQRT2);
  const resistance = inductance / between(random, 0.003, 0.009);
  const torquePerAmpere = 1.5 * polePairs * flux;
  const travelSpeed = topSpeed * between(random, 0.25, 0.8);
  const rampSeconds = between(random, 0.03, 0.12);
  const share = between(random, 0.35, 0.65);
  const inertia = (share * peakCurrent * torquePerAmpere * rampSeconds) / travelSpeed;
  return {
    ...{ resistance, inductance, polePairs, flux, inertia, bus, peakCurrent, travelSpeed, rampSeconds },
    friction: between(random, 0.03, 0.2) * rated * Math.SQRT2 * torquePerAmpere,
    // Takes a few per cent at full power.
    supplyResistance: (between(random, 0.01, 0.06) * bus ** 2) / (1.5 * bus * peakCurrent * 0.5),
    capacitance: between(random, 20e-6, 60e-6) * peakCurrent,
    tripCurrent: peakCurrent * between(random, 1.15, 1.4),
    keepsTripValue: chance(random, 0.6),
    controlSeconds: oneOf(random, [62.5e-6, 125e-6]),
    currentBandwidth: 2 * Math.PI * between(random, 400, 900),
    speedBandwidth: 2 * Math.PI * between(random, 15, 45),
    ...(chance(random, 0.2) && { rampSeconds: rampSeconds * 1.5 }),
  };
}
