import type { Finding } from '../../../kernel/assessment/assessment.ts';
import { intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { RailFinding } from './rail-findings.ts';
import { isSteady, isTaken, mayBeShort } from './rail-reading.ts';
import { isConfirmed, isProvenTwice, noTwoAgree, type SecondReadings } from './second-readings.ts';
import type { SwitchPosition } from './switch-position.ts';

/** What a conviction of the drive still lacks. */
export type Lacking =
  | 'motor-leads-off'
  | 'nothing-else-on-bus'
  | 'second-reading'
  | 'steady-first'
  | 'row-that-stands'
  | 'low-reading'
  | 'unlike-sister'
  | 'sound-sister';

interface Conditions {
  motorLeads: string;
  alsoOnBus: string | undefined;
  /** DC+ to DC−, in Ω. */
  dcBus: Reading;
  worst: SwitchPosition | undefined;
}

/**
 * What is missing before a stage that fails is proven bad; empty if it is. It takes two readings of the same position
 * that a bad transistor explains and nothing else does: not the motor, nor what else hangs on the bus, nor a capacitor that
 * charges, nor diodes that conduct, nor a resistor that the model has at one terminal.
 */
export function lackingForConviction(
  findings: readonly Finding[],
  evidence: SecondReadings,
  conditions: Conditions,
): Lacking[] {
  const lacking: Lacking[] = [];
  if (conditions.motorLeads !== 'off') lacking.push('motor-leads-off');
  if (conditions.alsoOnBus !== 'nothing') lacking.push('nothing-else-on-bus');
  // A sound drive that shows the same pattern speaks against a fault.
  if (evidence.sister === 'alike') lacking.push('unlike-sister');
  const failed = (findings as readonly RailFinding[]).filter(({ severity }) => severity === 'fail');
  const proofs = failed.map((one) => proofOf(one, evidence, conditions));
  const best = (['proven', 'once', 'moves', 'needs-sister', 'all-differ', 'high'] as const).find((one) =>
    proofs.includes(one),
  );
  if (best !== 'proven') lacking.push(lack[best ?? 'once']);
  return lacking;
}

type ProofOf = 'proven' | 'once' | 'moves' | 'needs-sister' | 'all-differ' | 'high';

const lack: Record<Exclude<ProofOf, 'proven'>, Lacking> = {
  once: 'second-reading',
  moves: 'steady-first',
  'needs-sister': 'sound-sister',
  'all-differ': 'row-that-stands',
  high: 'low-reading',
};

function proofOf(one: RailFinding, evidence: SecondReadings, { worst, dcBus }: Conditions): ProofOf {
  const isTwice = (position: SwitchPosition) => isProvenTwice(position, evidence, worst);
  if (one.code === 'rail-short') return one.suspects.some(isTwice) ? 'proven' : 'once';
  if (one.code === 'rail-short-both-ways') {
    // Through a bus that conducts, the opposite diodes read low both ways too.
    const bus = isTaken(dcBus) && !mayBeShort({ reading: dcBus, interval: intervalOf(dcBus, evidence.instrument) });
    return one.metal || bus ? 'proven' : 'once';
  }
  if (one.code !== 'rail-unbalanced') return 'once';
  // A bad transistor makes no reading higher: that is a contact, a broken track or the meter.
  if (one.high) return 'high';
  // Rather a capacitor that still charges than two bad transistors, even if U stands where it stood.
  if (noTwoAgree(one.rail, evidence)) return 'all-differ';
  const { leaks } = one;
  if (leaks.length === 0 && evidence.sister !== 'differs') return 'needs-sister';
  const { rows, tolerancePercent, instrument } = evidence;
  if (!isSteady(rows[one.rail], tolerancePercent, instrument)) return 'moves';
  if (leaks.some(isTwice)) return 'proven';
  const isOddTwice = one.suspects.some((position) => isConfirmed(position, evidence, worst));
  return evidence.sister === 'differs' && isOddTwice ? 'proven' : 'once';
}
