/** Boltzmann constant over elementary charge, in volts per kelvin (exact since the SI of 2019). */
const voltsPerKelvin = 1.380649e-23 / 1.602176634e-19;

/** Thermal voltage kT/q in volts at a temperature in °C: 25.7 mV at 25 °C. */
export function thermalVolts(celsius: number): number {
  return voltsPerKelvin * (celsius + 273.15);
}

/** Current in amperes through a diode at `volts` forward: I = Is·(exp(V/slope) − 1), the Shockley equation. */
export function diodeCurrent(volts: number, saturation: number, slope: number): number {
  return saturation * Math.expm1(volts / slope);
}

/** Its derivative, in A/V. */
export function diodeConductance(volts: number, saturation: number, slope: number): number {
  return (saturation / slope) * Math.exp(volts / slope);
}

/**
 * Shortens a step of Newton's iteration that would overshoot on the exponential to a logarithmic one, above the voltage
 * of the curve's strongest bend (as circuit simulators have done since the 1970s). All in volts.
 */
export function limitStep(wanted: number, before: number, saturation: number, slope: number): number {
  const critical = slope * Math.log(slope / (Math.SQRT2 * saturation));
  if (wanted <= critical || Math.abs(wanted - before) <= 2 * slope) return wanted;
  if (before <= 0) return slope * Math.log(wanted / slope);
  const growth = 1 + (wanted - before) / slope;
  return growth > 0 ? before + slope * Math.log(growth) : critical;
}
