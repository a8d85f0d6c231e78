import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { RotationSilence, TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';

const finding = findingMaker<TripTracePayloads>();

/** In min⁻¹. */
const slowest = 60;

const nothing = (why: RotationSilence, shown?: number) =>
  finding('rotation-nothing', 'note', { limits: ['trace-frequency-fits'], why, ...(shown !== undefined && { shown }) });

/**
 * Frequency of the currents against speed times pole pairs: f = p · n / 60 in a synchronous motor, as long as the drive leads
 * its currents by the rotor. They must have agreed earlier in the same recording: then pole pairs, speed and signs are right,
 * and a deviation before the trip speaks for encoder or commutation.
 *
 * That they agree is no statement. A drive takes the angle of its currents and the speed from one encoder, so they agree while
 * that encoder slips or jumps; and a commutation that is off by a fixed angle turns at the right frequency.
 */
export function rotation({ rotation: turned, motion }: TraceFigures, { polePairs }: TripTraceInput): TripTraceFinding {
  if (motion === undefined) return nothing('no-speed');
  if (polePairs === undefined) return nothing('no-pairs');
  if (turned === undefined) return nothing('too-little');
  const shown = Math.abs(turned.pairsBefore);
  const fits = limitValue('trace-frequency-fits') / 100;
  if (turned.spread > fits * shown) return nothing('too-little');
  if (Math.abs(shown - polePairs) > fits * polePairs) return nothing('pairs-do-not-fit', shown);
  const expected = (turned.pairsBefore * turned.lastRpm) / 60;
  const { lastHertz: hertz, lastSeconds } = turned;
  const off = Math.abs(hertz - expected);
  // A tenth of a turn within the windows is what noise and load may do.
  const least = Math.max(1 / (10 * lastSeconds), (limitValue('trace-frequency-off') / 100) * Math.abs(expected));
  if (off > 2 * least)
    return finding('rotation-for', 'undecided', { limits: ['trace-frequency-off'], hertz, expected });
  return nothing(off < fits * Math.abs(expected) ? 'agrees' : 'between');
}

/**
 * The speed signal jumps as no mass does, within two samples that are close together. It speaks for encoder, its cable or its
 * evaluation. Undefined: it says nothing, since an encoder may fail without a jump.
 */
export function speedJump(figures: TraceFigures): TripTraceFinding | undefined {
  const { speedJump: jump, sampleSeconds, speedInRpm, motion } = figures;
  if (jump === undefined || 2 * sampleSeconds > 0.001) return undefined;
  // A shaft that only trembles shows the noise of its speed, and so does a speed of unknown size.
  if (!speedInRpm || jump.share * (motion?.speedBefore ?? 0) < slowest) return undefined;
  const isJump = jump.share > limitValue('trace-speed-jump') / 100 && jump.share > 4 * jump.before;
  const parts = { limits: ['trace-speed-jump' as const], share: jump.share, seconds: 2 * sampleSeconds };
  return isJump ? finding('speed-jump-for', 'undecided', parts) : undefined;
}
