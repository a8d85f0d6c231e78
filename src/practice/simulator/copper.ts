/** Copper's resistance extrapolates to zero at minus this many °C: NBS Handbook 100 (recalled from memory). */
const inferredZero = 234.5;

/** Resistance at `celsius` of copper that has `ohms` at 20 °C: R2 = R1·(k + t2)/(k + t1). */
export function copperOhms(ohms: number, celsius: number): number {
  return (ohms * (inferredZero + celsius)) / (inferredZero + 20);
}
