/**
 * Model parameters: typical, project judgement, unless a line names a source. They are not limits: no verdict depends
 * on them. Resistances in ohms, ranges as [from, to].
 */
export const typical = {
  /** Peak of three-phase 400 V, rectified. */
  supplyVolts: 565,
  busFarads: 235e-6,
  /** Usual tolerance of electrolytic capacitors. */
  capacitorTolerance: 0.2,
  /** With the sense resistors beside it the bus falls by half in about half a minute, so a label would ask 10 minutes. */
  bleedOhms: 470e3,
  /**
   * From rail to rail over one terminal, and the share of it below the terminal: the measuring circuits differ between models,
   * so either rail can have the larger resistance.
   */
  legOhms: 950e3,
  lowerShare: [0.05, 0.95] as [number, number],
  resistorTolerance: 0.01,
  /** Microamperes at bus voltage in a data sheet; far less at room temperature. */
  switchLeakOhms: 500e6,
  /** A power diode drops about 0.4 V at a milliampere, so that a diode test shows 0.3 to 0.5 V. */
  diodeSaturation: 2.5e-9,
  diodeIdeality: 1.2,
  /** Saturation current of silicon about doubles for this many kelvins (textbook rule). */
  kelvinPerDoubling: 10,
  busToGroundOhms: 4.7e6,
  /** A closed switch or a diode that carries current, its source included. */
  supplyOhms: 0.5,
  /** Inner resistance of the source that replaces a charged capacitor during a reading. */
  capacitorOhms: 0.1,
  /** Below this voltage the bus counts as discharged, and its capacitor is left out. */
  restVolts: 0.05,
  cableMetres: [5, 40] as [number, number],
  /** Copper core of 1.5, 2.5 and 4 mm², stranded: IEC 60228 class 5, table 3 (recalled), beside the motors that use it. */
  motors: [
    { windingOhms: 3.5, coreOhmsPerMetre: 13.3e-3 },
    { windingOhms: 1.6, coreOhmsPerMetre: 7.98e-3 },
    { windingOhms: 0.7, coreOhmsPerMetre: 4.95e-3 },
  ],
  /** The screen's braid, in cores: about as much copper as one core. */
  screenShare: 1,
  /** 500 MΩ·km to 5 GΩ·km between conductors: plastics of motor cables, dry. */
  insulationOhmMetres: [500e9, 5e12] as [number, number],
  /** The windings of one motor differ by less than the limit for balance. */
  windingTolerance: 0.004,
  /** A sound dry servo motor at 20 °C, each phase. */
  frameInsulationOhms: [1.5e9, 60e9] as [number, number],
  frameTolerance: 0.15,
  /** The rule of thumb is 10; real insulations scatter around it. */
  kelvinPerHalving: [9, 11] as [number, number],
  /** Absorption of an insulation: conductance in A/V after one second, falling as a power of time. */
  absorptionConductance: 1e-9,
  absorptionPower: 0.9,
  contactOhms: 2e-3,
  /** A carbonised path conducts from here. */
  gapVolts: 200,
  /** From here a winding counts as hot, in °C: a defect that needs heat is there. */
  hotCelsius: 60,
  /** Bolts of the motor's flange: the frame is grounded by the machine as well as by its PE. */
  frameBondOhms: 0.02,
  motorPeOhms: 0.01,
  feedbackVolts: 5,
  feedbackSupplyOhms: 0.5,
  feedbackDeviceOhms: 33,
  feedbackCableOhms: 0.8,
  brakeOhms: 24,
  brakeVolts: 24,
  brakeSupplyOhms: 0.2,
  brakeInsulationOhms: 1e9,
  /** A brake output that is off, with its suppressor. */
  outputOffOhms: 10e3,
  /** 0 V of the control is grounded in the drive. */
  groundedOhms: 0.05,
  /** Copper of 0.75 mm², class 5. */
  idleCoreOhmsPerMetre: 26e-3,
  /** A silicon or PTC sensor, cold, and the drive's input. */
  sensorOhms: 600,
  sensorInsulationOhms: 20e9,
  sensorVolts: 3.3,
  sensorInputOhms: 2.2e3,
  brakingInsulationOhms: 1e9,
};
