import { between, betweenDecades, chance, oneOf, type Random } from '../../../kernel/random.ts';
import { type CurrentSensors, drawCurrentSensors } from './current-sensors.ts';

/** A servo axis as it moves: motor, drive and load, in SI units. */
export interface AxisInMotion {
  /** Of one phase of a star, in Ω. */
  resistance: number;
  /** Of one phase at a small current, in H: the mean of direct and quadrature axis. */
  inductance: number;
  /** (Lq − Ld) / (Lq + Ld): 0 for magnets on the surface of the rotor. */
  saliency: number;
  /** Share of the inductance that the iron leaves at the trip current. */
  unsaturated: number;
  polePairs: number;
  /** Flux of the magnets, peak per phase, in V·s. */
  flux: number;
  /** Of motor and load together, in kg·m². */
  inertia: number;
  /** Coulomb friction, and the pull of a weight, in N·m. */
  friction: number;
  weight: number;
  process: Process;
  bus: number;
  /** Of the supply with its rectifier, seen from the bus: Ω; and the capacitor, F. */
  supplyResistance: number;
  capacitance: number;
  /** Where the braking circuit begins to work, as a multiple of the bus. */
  brakingShare: number;
  /** Peak current that the drive controls to, and the level at which it trips, in A. */
  peakCurrent: number;
  tripCurrent: number;
  sensors: CurrentSensors;
  /** Of one control step, in s. */
  controlSeconds: number;
  /** Bandwidths in rad/s. */
  currentBandwidth: number;
  speedBandwidth: number;
  /** Speed at which the axis travels, in rad/s of the shaft, the time to reach it, and how long it travels and rests, in s. */
  travelSpeed: number;
  rampSeconds: number;
  travelSeconds: number;
  restSeconds: number;
  /** The drive stores the currents that tripped it; otherwise its next sample finds them gone. */
  keepsTripValue: boolean;
}

/** What a sound machine does with its axis besides moving it, in N·m: a force that comes and goes, and one that swings. */
export interface Process {
  force: number;
  everySeconds: number;
  forceSeconds: number;
  /** A crank, a cam, a resonance: per turn of the shaft, or in Hz. */
  swing: number;
  swingsPerTurn: number;
  swingHertz: number;
}

/** Draws a servo motor of the usual sizes, with a drive and a load that fit it. */
export function drawAxisInMotion(random: Random): AxisInMotion {
  const bus = oneOf(random, [310, 540, 565, 650]) * between(random, 0.95, 1.05);
  const rated = betweenDecades(random, 1.5, 30);
  const peakCurrent = rated * Math.SQRT2 * between(random, 2, 3.5);
  const polePairs = oneOf(random, [2, 3, 4, 4, 5, 7]);
  const topSpeed = between(random, 250, 520);
  const flux = (0.85 * bus) / Math.sqrt(3) / (polePairs * topSpeed);
  // Voltage drop across the inductance at rated current and speed: 10 to 30 per cent of the phase voltage.
  const inductance = (between(random, 0.1, 0.3) * bus) / Math.sqrt(3) / (polePairs * topSpeed * rated * Math.SQRT2);
  const resistance = inductance / between(random, 0.003, 0.009);
  const torquePerAmpere = 1.5 * polePairs * flux;
  const travelSpeed = topSpeed * between(random, 0.1, 0.8);
  const rampSeconds = between(random, 0.03, 0.12);
  const share = between(random, 0.3, 0.6);
  const inertia = (share * peakCurrent * torquePerAmpere * rampSeconds) / travelSpeed;
  const ratedTorque = rated * Math.SQRT2 * torquePerAmpere;
  const tripCurrent = peakCurrent * between(random, 1.15, 1.4);
  return {
    ...{ resistance, inductance, polePairs, flux, inertia, bus, peakCurrent, travelSpeed, rampSeconds, tripCurrent },
    saliency: chance(random, 0.4) ? between(random, 0.05, 0.4) : 0,
    unsaturated: between(random, 0.6, 1),
    friction: between(random, 0.03, 0.2) * ratedTorque,
    weight: chance(random, 0.3) ? oneOf(random, [-1, 1]) * between(random, 0.1, 0.5) * ratedTorque : 0,
    process: drawProcess(random, ratedTorque),
    // Takes a few per cent at full power.
    supplyResistance: (between(random, 0.01, 0.06) * bus ** 2) / (1.5 * bus * peakCurrent * 0.5),
    brakingShare: between(random, 1.18, 1.42),
    capacitance: between(random, 20e-6, 60e-6) * peakCurrent,
    sensors: drawCurrentSensors(random, tripCurrent),
    keepsTripValue: chance(random, 0.6),
    controlSeconds: oneOf(random, [62.5e-6, 125e-6]),
    currentBandwidth: 2 * Math.PI * between(random, 400, 900),
    speedBandwidth: 2 * Math.PI * between(random, 15, 45),
    travelSeconds: between(random, 0, 0.2),
    restSeconds: chance(random, 0.7) ? between(random, 0.02, 0.06) : between(random, 0.1, 0.4),
  };
}

function drawProcess(random: Random, ratedTorque: number): Process {
  const forces = chance(random, 0.3);
  const swings = chance(random, 0.25);
  const perTurn = chance(random, 0.5);
  return {
    force: forces ? oneOf(random, [-1, 1]) * between(random, 0.2, 1) * ratedTorque : 0,
    everySeconds: between(random, 0.08, 0.3),
    forceSeconds: between(random, 0.005, 0.06),
    swing: swings ? between(random, 0.05, 0.5) * ratedTorque : 0,
    swingsPerTurn: perTurn ? oneOf(random, [0.2, 1, 1, 2, 6]) : 0,
    swingHertz: perTurn ? 0 : betweenDecades(random, 15, 200),
  };
}
