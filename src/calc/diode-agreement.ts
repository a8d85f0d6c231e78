import { type Finding, finding } from './assessment.ts';
import { type BridgeAssessment, suspectPositions } from './bridge.ts';
import { type DiodePosition, isSound } from './diode-rail.ts';
import { type Interval, intervalOf } from './interval.ts';
import { limitRange, limitValue } from './limits.ts';
import type { Reading } from './reading.ts';

export type AgreementCode =
  | 'tests-agree'
  | 'tests-contradict'
  | 'resistance-fails'
  | 'resistance-finds-leak'
  | 'resistance-explained'
  | 'resistance-sees-less'
  | 'resistance-undecided';

interface Both {
  /** Findings of the diode test alone. */
  findings: readonly Finding[];
  /** By position, `plusU` … `minusW`. */
  diode: ReadonlyMap<string, DiodePosition>;
  resistance: BridgeAssessment;
  /** The six resistances by position, in Ω. */
  readings: ReadonlyMap<string, Reading>;
}

/**
 * The diode test beside the resistance variant. A position that is a short in one and sound in the other contradicts
 * itself. A leak that only the resistances show is no contradiction: the diode test cannot see it; nor is an open
 * diode, which the resistances cannot see, because they are read with the diodes blocking.
 */
export function compareTests({ findings, diode, resistance, readings }: Both): {
  found: Finding<AgreementCode>[];
  contradicted: string[];
} {
  const byResistance = suspectPositions(resistance.findings);
  const byDiode = suspectPositions(findings);
  const contradicted = [...diode].flatMap(([id, position]) =>
    contradicts(id, position, readings.get(id), findings) ? [id] : [],
  );
  const found: Finding<AgreementCode>[] = [];
  const say = (code: AgreementCode, severity: Finding['severity'], ids: readonly string[]) => {
    if (ids.length === 0) return;
    const names = severity === 'fail' ? { suspects: ids.join(' ') } : { positions: ids.join(' ') };
    found.push(finding(code, severity, { readings: [...ids], names }));
  };
  say('tests-contradict', 'undecided', contradicted);
  const explained = byResistance.filter((id) => carriedOver(id, byDiode, byResistance, diode));
  say('resistance-explained', 'note', explained);
  const left = byResistance.filter((id) => !contradicted.includes(id) && !explained.includes(id));
  const sound = left.filter((id) => {
    const position = diode.get(id);
    return position !== undefined && isSound(position);
  });
  say('resistance-finds-leak', 'fail', sound);
  say(
    'resistance-fails',
    'fail',
    left.filter((id) => !sound.includes(id)),
  );
  const verdict = resistanceVerdict(resistance, diode);
  if (verdict === 'undecided') found.push(finding('resistance-undecided', 'undecided'));
  if (verdict === 'go')
    say(
      'resistance-sees-less',
      'note',
      byDiode.filter((id) => !contradicted.includes(id)),
    );
  const same = [...byDiode].sort().join() === [...left].sort().join();
  const both = findings.every(({ severity }) => severity !== 'undecided') && verdict !== 'undecided';
  if (same && both && contradicted.length === 0) found.push(finding('tests-agree', 'note'));
  return { found, contradicted };
}

/**
 * A short that both tests name joins its terminal to one rail. The bleed resistor carries that over to the other rail,
 * where the resistances then differ, though every position there conducts one way and blocks the other.
 */
function carriedOver(
  id: string,
  byDiode: readonly string[],
  byResistance: readonly string[],
  diode: Both['diode'],
): boolean {
  const position = diode.get(id);
  const other = id.startsWith('plus') ? 'minus' : 'plus';
  const agreed = byDiode.some((short) => short.startsWith(other) && byResistance.includes(short));
  return agreed && position !== undefined && isSound(position);
}

/** Six over-range resistances prove nothing by themselves; that every diode conducts proves the leads. */
function resistanceVerdict({ verdict, findings }: BridgeAssessment, diode: Both['diode']): BridgeAssessment['verdict'] {
  const open = findings.filter(({ severity }) => severity === 'undecided');
  const onlyLeads = open.length > 0 && open.every(({ code }) => code === 'all-open');
  return verdict === 'undecided' && onlyLeads && [...diode.values()].every(isSound) ? 'go' : verdict;
}

function contradicts(
  id: string,
  position: DiodePosition,
  reading: Reading | undefined,
  findings: readonly Finding[],
): boolean {
  if (reading === undefined || reading.kind === 'missing') return false;
  const ohms = inOhms(reading);
  if (ohms.hi <= limitValue('bridge-short')) return isSound(position);
  const named = (code: string) =>
    findings.some((one) => one.code === code && (one.names.suspects?.split(' ') ?? []).includes(id));
  if (named('diode-short')) return ohms.lo > limitValue('bridge-short');
  // A path that lets the diode test read below its blocking limit has a few kilohms at most.
  return named('diode-leaky') && ohms.lo >= limitRange('bridge-dc-minus-typical').from;
}

/** OL without its range is far above a short on any range of a multimeter that chooses its range by itself. */
function inOhms(reading: Reading): Interval {
  const open = reading.kind === 'over' && reading.atLeast === undefined;
  return open ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY } : intervalOf(reading);
}
