/** Where the straight line of copper's resistance meets zero, in °C below: NBS Handbook 100 (recalled, see FACTS). */
const inferredZero = 234.5;

/** Resistance at `celsius` of what has `ohms` at 20 °C: R2 = R1·(k + t2)/(k + t1). */
export function copperOhms(ohms: number, celsius: number): number {
  return (ohms * (inferredZero + celsius)) / (inferredZero + 20);
}
