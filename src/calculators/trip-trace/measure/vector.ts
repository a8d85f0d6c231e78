import type { Trace } from './trace.ts';

/** Magnitude and unwrapped angle of the current vector, by the Clarke transformation (power per phase kept). */
export interface CurrentVector {
  magnitude: Float64Array;
  angle: Float64Array;
}

export function currentVector({ currents: [u, v, w] }: Pick<Trace, 'currents'>): CurrentVector {
  const magnitude = new Float64Array(u.length);
  const angle = new Float64Array(u.length);
  let turns = 0;
  let before = 0;
  for (let i = 0; i < u.length; i++) {
    const [iu, iv, iw] = [u[i] ?? 0, v[i] ?? 0, w[i] ?? 0];
    const alpha = (2 * iu - iv - iw) / 3;
    const beta = (iv - iw) / Math.sqrt(3);
    magnitude[i] = Math.hypot(alpha, beta);
    const raw = Math.atan2(beta, alpha);
    if (i > 0 && raw - before > Math.PI) turns--;
    if (i > 0 && before - raw > Math.PI) turns++;
    angle[i] = raw + turns * 2 * Math.PI;
    before = raw;
  }
  return { magnitude, angle };
}
