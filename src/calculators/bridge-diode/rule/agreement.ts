import { type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';
import { limitRange, limitValue } from '../../../kernel/limits.ts';
import { type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { BridgeAssessment } from '../../bridge/rule/assess.ts';
import { suspectPositions } from '../../bridge/rule/suspect-positions.ts';
import { partsOfPosition, type SwitchPosition } from '../../bridge/rule/switch-position.ts';
import { type DiodePosition, isSound } from './rail.ts';
import type { DiodeRailFinding } from './rail-findings.ts';

/** The readings are the switch positions. */
interface OfPositions {
  readings: SwitchPosition[];
}

interface Suspected extends OfPositions {
  suspects: SwitchPosition[];
}

export interface AgreementPayloads {
  'tests-agree': Nothing;
  'tests-contradict': OfPositions;
  'resistance-fails': Suspected;
  'resistance-finds-leak': Suspected;
  'resistance-explained': OfPositions;
  'resistance-sees-less': OfPositions;
  'resistance-undecided': Nothing;
}

type AgreementFinding = FindingOf<AgreementPayloads>;

const finding = findingMaker<AgreementPayloads>();

interface Both {
  /** Findings of the diode test alone. */
  findings: readonly DiodeRailFinding[];
  diode: readonly DiodePosition[];
  resistance: BridgeAssessment;
  /** The six resistances, in Ω. */
  readings: Readonly<Record<SwitchPosition, Reading>>;
}

/**
 * The diode test beside the resistance variant. A position that is a short in one and sound in the other contradicts
 * itself. A leak that only the resistances show is no contradiction: the diode test cannot see it; nor is an open
 * diode: the resistances are read with the diodes blocking.
 */
export function compareTests({ findings, diode, resistance, readings }: Both): {
  found: AgreementFinding[];
  contradicted: SwitchPosition[];
} {
  const byResistance = suspectPositions(resistance.findings);
  const byDiode = suspectPositions(findings);
  const contradicted = diode
    .filter((one) => contradicts(one, readings[one.position], findings))
    .map(({ position }) => position);
  const found: AgreementFinding[] = [];
  const mention = (code: 'resistance-explained' | 'resistance-sees-less', at: SwitchPosition[]) => {
    if (at.length > 0) found.push(finding(code, 'note', { readings: at }));
  };
  const fail = (code: 'resistance-fails' | 'resistance-finds-leak', at: SwitchPosition[]) => {
    if (at.length > 0) found.push(finding(code, 'fail', { readings: at, suspects: at }));
  };
  if (contradicted.length > 0) found.push(finding('tests-contradict', 'undecided', { readings: [...contradicted] }));
  const isSoundAt = (position: SwitchPosition) => diode.some((one) => one.position === position && isSound(one));
  const agreed = byDiode.filter((position) => byResistance.includes(position));
  const explained = byResistance.filter((position) => isSoundAt(position) && carriedOver(position, agreed));
  mention('resistance-explained', explained);
  const left = byResistance.filter((position) => !contradicted.includes(position) && !explained.includes(position));
  fail('resistance-finds-leak', left.filter(isSoundAt));
  fail(
    'resistance-fails',
    left.filter((position) => !isSoundAt(position)),
  );
  const verdict = resistanceVerdict(resistance, diode);
  if (verdict === 'undecided') found.push(finding('resistance-undecided', 'undecided'));
  if (verdict === 'go') {
    mention(
      'resistance-sees-less',
      byDiode.filter((position) => !contradicted.includes(position)),
    );
  }
  const same = [...byDiode].sort().join() === [...left].sort().join();
  const both = findings.every(({ severity }) => severity !== 'undecided') && verdict !== 'undecided';
  if (same && both && contradicted.length === 0) found.push(finding('tests-agree', 'note'));
  return { found, contradicted };
}

/**
 * A short that both tests name joins its terminal to one rail. Through the bleed resistor the resistances of the other
 * rail then differ too, though every position there conducts one way and blocks the other.
 */
function carriedOver(position: SwitchPosition, agreed: readonly SwitchPosition[]): boolean {
  return agreed.some((short) => partsOfPosition[short].rail !== partsOfPosition[position].rail);
}

/** Six over-range resistances prove nothing by themselves, but if every diode conducts the leads had contact. */
function resistanceVerdict({ verdict, findings }: BridgeAssessment, diode: Both['diode']): BridgeAssessment['verdict'] {
  const open = findings.filter(({ severity }) => severity === 'undecided');
  const onlyLeads = open.length > 0 && open.every(({ code }) => code === 'all-open');
  return verdict === 'undecided' && onlyLeads && diode.every(isSound) ? 'go' : verdict;
}

function contradicts(one: DiodePosition, reading: Reading, findings: readonly DiodeRailFinding[]): boolean {
  if (reading.kind === 'missing') return false;
  const ohms = inOhms(reading);
  if (ohms.hi <= limitValue('bridge-short')) return isSound(one);
  const named = (code: 'diode-short' | 'diode-leaky') =>
    findings.some((found) => found.code === code && found.suspects.includes(one.position));
  if (named('diode-short')) return ohms.lo > limitValue('bridge-short');
  // A path that makes the diode test read below its blocking limit has at most a few kilohms.
  return named('diode-leaky') && ohms.lo >= limitRange('bridge-dc-minus-typical').from;
}

/** OL without a noted range is far above a short on any range of an autoranging multimeter. */
function inOhms(reading: Reading): Interval {
  const open = reading.kind === 'over' && reading.atLeast === undefined;
  return open ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY } : intervalOf(reading);
}
