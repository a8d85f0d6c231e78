import type { Part } from '../../kernel/vocabulary.ts';
import type { Decision } from '../../visit/guide/decision.ts';
import type { Conclusion, Judgement } from './conclusion.ts';
import type { Purpose } from './purpose.ts';

/** What can prove a part bad; one of them is enough. */
const proving: Record<Part, readonly Purpose[]> = {
  drive: ['bridge', 'retry-leads-off', 'retry-feedback-off', 'inspect'],
  motor: ['isolation', 'winding-motor'],
  'motor-cable': ['isolation', 'winding-motor'],
  'feedback-cable': ['retry-device-end', 'inspect'],
  'feedback-device': ['retry-device-end'],
  'protective-conductor': ['insulation', 'isolation'],
};

export interface Truth {
  bad: readonly Part[];
  /** Bad by the person's own tester: to name the drive is then right, and so is to name only the fault. */
  hurtDrive: boolean;
  /** Water that bridges the connector is still in it. */
  wet: boolean;
}

export interface Judged {
  judgement: Judgement;
  /** Named, and sound in truth. */
  over: Part[];
  /** Bad in truth, and not named. */
  missed: Part[];
}

/**
 * A conclusion held against the truth, against what the guide could decide on this axis, and against what was measured:
 * `needed` are the measurements and trials of the sound path.
 */
export function judge(
  conclusion: Conclusion,
  truth: Truth,
  guide: Pick<Decision, 'kind' | 'replace'>,
  purposes: ReadonlySet<Purpose>,
  needed: readonly Purpose[],
): Judged {
  const named = conclusion.kind === 'replace' ? conclusion.parts : [];
  const over = named.filter((part) => !truth.bad.includes(part) && !(part === 'drive' && truth.hurtDrive));
  const missed = truth.bad.filter((part) => !named.includes(part));
  // Whoever names no part must have looked at all of them.
  const measured = needed.length > 0 && needed.every((purpose) => purposes.has(purpose));
  const judgement = (): Judgement => {
    if (conclusion.kind === 'undecided') {
      if (guide.kind !== 'undecided' && guide.kind !== 'inconclusive') return 'could-be-decided';
      return measured ? 'right' : 'unproven';
    }
    if (conclusion.kind === 'nothing') {
      // A part that is bad now and then passes everything: nothing is replaced, and the axis is watched.
      if (missed.length > 0 && guide.kind !== 'no-fault-found') return 'bad-part-missed';
      if (truth.wet) return 'left-wet';
      return measured ? 'right' : 'unproven';
    }
    if (over.length > 0) return missed.length > 0 ? 'wrong-parts' : 'sound-part-named';
    if (missed.length > 0) return 'bad-part-missed';
    const tellable = truth.bad.every(
      (part) => guide.kind === 'replace' && guide.replace.some((one) => one.part === part),
    );
    if (!tellable) return 'guessed';
    return named.every((part) => proving[part].some((purpose) => purposes.has(purpose))) ? 'right' : 'unproven';
  };
  const judged = judgement();
  // What nobody can find today is not missed.
  return { judgement: judged, over, missed: judged === 'right' ? [] : missed };
}
