import { type Phase, type Phases, phases } from '../../kernel/electrics/phases.ts';
import { between, betweenDecades, oneOf, type Random } from '../../kernel/random.ts';
import type { IdleCore } from './axis-state.ts';
import { typical } from './typical.ts';

/** One axis as built, at reference temperatures. Resistances in ohms, lengths in metres. */
export interface AxisParameters {
  supplyVolts: number;
  busFarads: number;
  bleedOhms: number;
  /** Sense and snubber resistors from DC+ to each terminal, and from each terminal to DC−. */
  upperOhms: Phases<number>;
  lowerOhms: Phases<number>;
  /** Off-state leakage of each switch at 25 °C, as a resistance. */
  switchLeakOhms: number;
  /** Free-wheeling diode at 25 °C. */
  diodeSaturation: number;
  diodeIdeality: number;
  /** From DC− to the protective bar, inside the drive. */
  busToGroundOhms: number;
  cableMetres: number;
  /** Resistance of one core per metre, at 20 °C. */
  coreOhmsPerMetre: number;
  /** Insulation between any two conductors, in Ω·m at 20 °C: divide by the length. */
  insulationOhmMetres: number;
  /** Resistance of each phase at 20 °C. */
  windingOhms: Phases<number>;
  /** Insulation of each phase to the frame, dry, at 20 °C. */
  frameInsulationOhms: Phases<number>;
  /** The motor's insulation resistance halves for each rise by this many kelvins. */
  kelvinPerHalving: number;
  /** Time constant of the winding's cooling at standstill; infinite in the tidy world, where it keeps its temperature. */
  coolingSeconds: number;
  feedbackVolts: number;
  feedbackDeviceOhms: number;
  brakeOhms: number;
  gravityLoaded: boolean;
  /** Balancing resistors, if the bus has two capacitors in series: each has then twice `busFarads`. 1 GΩ is open. */
  balance?: { upperOhms: number; lowerOhms: number };
  /** Capacitors and discharge resistors of the drives on the same bus. */
  link?: { farads: number; bleedOhms: number };
  /** The braking resistor, between DC+ and the chopper. */
  brakingOhms?: number;
  /** Motor of the other axis on this drive, whose brake opens with the same enable. */
  neighbour?: { windingOhms: number; frameInsulationOhms: number; gravityLoaded: boolean };
  /** The PE core can be thinner than the phases. At 20 °C. */
  peOhmsPerMetre: number;
  /** Insulation of the cable halves for each rise by this many kelvins. */
  cableKelvinPerHalving: number;
  /** Cores beside U, V, W and PE in the motor cable. Without them the brake has a cable of its own. */
  idleCores: readonly IdleCore[];
  /** The feedback runs in the motor cable and has its contacts in the motor connector. */
  oneCable: boolean;
  /** From each phase to PE, in an output filter or suppressor at the drive end of the cable. */
  filterOhms?: number;
}

/** A sound axis of the tidy world, drawn from the typical ranges: young, dry, alone, its brake in its own cable. */
export function drawAxis(random: Random): AxisParameters {
  const motor = oneOf(random, typical.motors);
  const spread = (value: number, share: number) => value * between(random, 1 - share, 1 + share);
  const perPhase = (draw: (phase: Phase) => number): Phases<number> =>
    Object.fromEntries(phases.map((phase) => [phase, draw(phase)])) as Phases<number>;
  const winding = spread(motor.windingOhms, 0.2);
  const lowerShare = between(random, ...typical.lowerShare);
  const frame = betweenDecades(random, ...typical.frameInsulationOhms);
  return {
    supplyVolts: typical.supplyVolts,
    busFarads: spread(typical.busFarads, typical.capacitorTolerance),
    bleedOhms: spread(typical.bleedOhms, typical.resistorTolerance),
    upperOhms: perPhase(() => spread(typical.legOhms * (1 - lowerShare), typical.resistorTolerance)),
    lowerOhms: perPhase(() => spread(typical.legOhms * lowerShare, typical.resistorTolerance)),
    switchLeakOhms: typical.switchLeakOhms,
    diodeSaturation: typical.diodeSaturation,
    diodeIdeality: typical.diodeIdeality,
    busToGroundOhms: typical.busToGroundOhms,
    cableMetres: Math.round(between(random, ...typical.cableMetres)),
    coreOhmsPerMetre: motor.coreOhmsPerMetre,
    insulationOhmMetres: betweenDecades(random, ...typical.insulationOhmMetres),
    windingOhms: perPhase(() => spread(winding, typical.windingTolerance)),
    frameInsulationOhms: perPhase(() => spread(frame, typical.frameTolerance)),
    kelvinPerHalving: between(random, ...typical.kelvinPerHalving),
    coolingSeconds: Number.POSITIVE_INFINITY,
    feedbackVolts: typical.feedbackVolts,
    feedbackDeviceOhms: typical.feedbackDeviceOhms,
    brakeOhms: typical.brakeOhms,
    gravityLoaded: random() < 0.5,
    peOhmsPerMetre: motor.coreOhmsPerMetre,
    cableKelvinPerHalving: Number.POSITIVE_INFINITY,
    idleCores: [],
    oneCable: false,
  };
}
