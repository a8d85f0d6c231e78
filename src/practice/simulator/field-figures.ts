import prevalenceData from '../../../content/field/prevalences.json' with { type: 'json' };

const { prevalences } = prevalenceData;

/** How common each property of a sound axis is, each from 0 to 1. */
export interface PropertyShares {
  /** No resistors at the output terminals; else alike on both rails; else as the tidy world has them. */
  senseOpen: number;
  senseAlike: number;
  /** One terminal has a resistor of its own, to one rail. */
  senseUnlike: number;
  seriesCapacitors: number;
  /** Of those, with one balancing resistor open. */
  balanceOpen: number;
  link: number;
  brakingResistor: number;
  neighbour: number;
  longCable: number;
  /** Of those, with a PE core thinner than the phases. */
  thinPe: number;
  pvcCable: number;
  oneCable: number;
  sensorInCable: number;
  brakeWithoutGravity: number;
  filter: number;
  oldMotor: number;
}

const shareOf = (id: keyof typeof prevalences) => prevalences[id].share;

/** The shares of content/field, which gives the reason for each. */
export const fieldShares: PropertyShares = {
  senseOpen: shareOf('sense-open'),
  senseAlike: shareOf('sense-alike'),
  senseUnlike: shareOf('unlike-terminal'),
  seriesCapacitors: shareOf('series-capacitors'),
  balanceOpen: shareOf('balance-open'),
  link: shareOf('dc-link'),
  brakingResistor: shareOf('braking-resistor'),
  neighbour: shareOf('neighbour'),
  longCable: shareOf('long-cable'),
  thinPe: shareOf('thin-pe'),
  pvcCable: shareOf('pvc-cable'),
  oneCable: shareOf('one-cable'),
  sensorInCable: shareOf('sensor-in-cable'),
  brakeWithoutGravity: shareOf('brake-without-gravity'),
  filter: shareOf('filter'),
  oldMotor: shareOf('old-motor'),
};

/**
 * What the field has and the tidy world has not: project judgement, factor 2 either way, and no limits. Resistances in
 * ohms, ranges as [from, to].
 */
export const field = {
  busFarads: [100e-6, 1.5e-3] as [number, number],
  /** From 565 V to below 0.1 V in the ten minutes of the label. */
  dischargeSeconds: [15, 55] as [number, number],
  /** Resistance of all sense resistors from rail to rail, over that of the whole bus. */
  senseToDischarge: [1.2, 6] as [number, number],
  openOhms: 1e9,
  ownResistorOhms: [100e3, 1e6] as [number, number],
  /** Share of the other axes that can fall. */
  neighbourFalls: 0.3,
  linkedDrives: [1, 4] as [number, number],
  brakingOhms: [15, 150] as [number, number],
  longMetres: [40, 100] as [number, number],
  /** Copper of 1.5 mm², class 5. */
  thinPeOhmsPerMetre: 13.3e-3,
  /** 5 to 20 MΩ·km: PVC, which falls to some megohm-kilometres at 30 °C. */
  pvcOhmMetres: [5e9, 20e9] as [number, number],
  pvcKelvinPerHalving: 7,
  plasticKelvinPerHalving: 10,
  /** Each phase to PE, with the discharge resistors of suppressor capacitors. */
  filterOhms: [3e6, 20e6] as [number, number],
  /**
   * Each phase of an old or damp, but sound motor at 20 °C. Its winding as one reads a third, 15 to 90 MΩ: corrected to
   * 40 °C, some of them are below the published minimum of 5 MΩ and have run so for years.
   */
  oldFrameOhms: [45e6, 270e6] as [number, number],
  /** Half an hour to an hour and a half. */
  coolingSeconds: [1800, 5400] as [number, number],
  /** Open-circuit voltages of multimeters in their low and high ranges. */
  lowRangeVolts: [0.3, 3] as [number, number],
  highRangeVolts: [0.3, 1.5] as [number, number],
  negativeRed: 0.1,
  rangedDown: 0.8,
  /** Constant error of a thermometer on a winding, in kelvins. */
  thermometerKelvin: 4,
};
