/** Resistance of a DC coil in Ω by its plate: rated voltage in V squared over rated power in W. Undefined for zero or less. */
export function coilResistance(volts: number, watts: number): number | undefined {
  const ohms = (volts * volts) / watts;
  return volts > 0 && watts > 0 && Number.isFinite(ohms) && ohms > 0 ? ohms : undefined;
}
