import type { Part } from '../../kernel/vocabulary.ts';
import type { Decision } from '../../visit/guide/decision.ts';
import type { Conclusion, Judgement } from './conclusion.ts';
import type { Purpose } from './purpose.ts';

/** The measurements and trials that can prove a part bad; one of them is enough. */
const proving: Record<Part, readonly Purpose[]> = {
  drive: ['bridge', 'retry-leads-off', 'retry-feedback-off', 'inspect', 'braking'],
  motor: ['isolation', 'winding-motor'],
  'motor-cable': ['isolation', 'winding-motor', 'idle-cores'],
  'feedback-cable': ['retry-device-end', 'inspect'],
  'feedback-device': ['retry-device-end'],
  'protective-conductor': ['insulation', 'isolation'],
  'braking-resistor': ['braking'],
};

export interface Truth {
  bad: readonly Part[];
  /** Damaged by the person's own tester: naming the drive is then right, and so is naming the fault alone. */
  hurtDrive: boolean;
  /** Water still bridges the connector. */
  wet: boolean;
}

export interface Judged {
  judgement: Judgement;
  /** Named although sound. */
  over: Part[];
  /** Bad but not named. */
  missed: Part[];
}

/**
 * Compares a conclusion with the truth, with what the guide could decide on this axis, and with what was measured.
 * `needed`: the measurements and trials of the sound path.
 */
export function judgeConclusion(
  conclusion: Conclusion,
  truth: Truth,
  guide: Pick<Decision, 'kind' | 'replace'>,
  purposes: ReadonlySet<Purpose>,
  needed: readonly Purpose[],
): Judged {
  const named = conclusion.kind === 'replace' ? conclusion.parts : [];
  const over = named.filter((part) => !truth.bad.includes(part) && !(part === 'drive' && truth.hurtDrive));
  const missed = truth.bad.filter((part) => !named.includes(part));
  // Naming no part is right only after every needed measurement.
  const measured = needed.length > 0 && needed.every((purpose) => purposes.has(purpose));
  const judgement = (): Judgement => {
    if (conclusion.kind === 'undecided') {
      if (guide.kind !== 'undecided' && guide.kind !== 'inconclusive') return 'could-be-decided';
      return measured ? 'right' : 'unproven';
    }
    if (conclusion.kind === 'nothing') {
      // A part that fails only now and then passes everything: nothing is replaced, and the axis is watched.
      if (missed.length > 0 && guide.kind !== 'no-fault-found') return 'bad-part-missed';
      if (truth.wet) return 'left-wet';
      return measured ? 'right' : 'unproven';
    }
    if (over.length > 0) return missed.length > 0 ? 'wrong-parts' : 'sound-part-named';
    if (missed.length > 0) return 'bad-part-missed';
    const provable = truth.bad.every(
      (part) => guide.kind === 'replace' && guide.replace.some((one) => one.part === part),
    );
    if (!provable) return 'guessed';
    return named.every((part) => proving[part].some((purpose) => purposes.has(purpose))) ? 'right' : 'unproven';
  };
  const judged = judgement();
  // A part that nobody can find today does not count as missed.
  return { judgement: judged, over, missed: judged === 'right' ? [] : missed };
}
