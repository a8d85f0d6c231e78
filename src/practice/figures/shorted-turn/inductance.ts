/** A winding of one phase: its turns, its inductance in H and its resistance in Ω when whole. */
export interface Winding {
  turns: number;
  henries: number;
  ohms: number;
}

/** Share of the field of one turn that its neighbours in the slot take part in: typical, project judgement. */
const coupling = 0.9;

/**
 * Inductance in H that a meter of `hertz` sees at the terminals when `shorted` turns are a closed ring. Two coupled
 * coils, the second one shorted: its impedance is reflected into the first as (ωM)²/(R2 + jωL2), which takes
 * ω²M²L2/(R2² + ω²L2²) from the inductance (reflected impedance: any textbook of circuits). Inductance grows with the
 * square of the turns, resistance with the turns.
 */
export function shownInductance({ turns, henries, ohms }: Winding, shorted: number, hertz: number): number {
  const [left, ring] = [(turns - shorted) / turns, shorted / turns];
  const [first, second] = [henries * left ** 2, henries * ring ** 2];
  const mutual = coupling ** 2 * first * second;
  const omega = 2 * Math.PI * hertz;
  const reflected = (omega ** 2 * mutual * second) / ((ohms * ring) ** 2 + (omega * second) ** 2);
  return first - (shorted === 0 ? 0 : reflected);
}

/**
 * Current in A that the turning magnets drive around the ring: the voltage of its turns over the impedance of its turns
 * (law of induction). `volts` is the voltage of the whole phase at that speed and `hertz` its frequency.
 */
export function ringAmperes(winding: Winding, shorted: number, volts: number, hertz: number): number {
  if (shorted === 0) return 0;
  const ring = shorted / winding.turns;
  return (volts * ring) / Math.hypot(winding.ohms * ring, 2 * Math.PI * hertz * winding.henries * ring ** 2);
}
