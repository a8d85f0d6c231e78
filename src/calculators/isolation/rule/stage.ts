import { type FindingOf, findingMaker, type Severity } from '../../../kernel/assessment/assessment.ts';
import type { WindingJudgement } from '../../../kernel/assessment/winding-insulation.ts';
import { type Phase, type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/** The rows of readings against ground; `bonded` is the cable alone with its PE core and screen joined to ground. */
export type StageName = 'joined' | 'cable' | 'bonded' | 'motor';

export type StageStatus = 'good' | 'bad' | 'undecided' | 'not-taken';

/** Phases of one row with the same judgement. */
interface StageJudged {
  stage: StageName;
  phases: Phase[];
  limitOhms: number;
  /** The lowest figure among them; absent without any figure. */
  lowestOhms?: number;
}

/** `length-explains`: below the after-trip limit, but a sound cable of this length may read so. */
export type StageReadingJudgement = WindingJudgement | 'length-explains';

type JudgedPayloads = Record<`stage-${StageReadingJudgement}`, StageJudged>;

export interface StagePayloads extends JudgedPayloads {
  'stage-incomplete': Pick<StageJudged, 'stage' | 'phases'>;
}

export type StageFinding = FindingOf<StagePayloads>;
type StageCode = StageFinding['code'];

const finding = findingMaker<StagePayloads>();

export interface StageJudgement {
  status: StageStatus;
  findings: StageFinding[];
}

/**
 * Judges U, V and W of one row against the after-trip point, each by `judge`. `tested` is false if the test voltage is
 * too low to pass any insulation; `corrections` are the limits behind the temperature correction.
 */
export function judgeStage(
  stage: StageName,
  readings: Phases<Reading>,
  judge: (reading: Reading) => StageReadingJudgement,
  tested: boolean,
  corrections: LimitId[] = [],
): StageJudgement {
  const groups = new Map<StageCode, Phase[]>();
  for (const phase of phases) {
    const reading = readings[phase];
    const code: StageCode = reading.kind === 'missing' ? 'stage-incomplete' : `stage-${judge(reading)}`;
    groups.set(code, [...(groups.get(code) ?? []), phase]);
  }
  const limits: LimitId[] = ['after-trip-point', ...corrections];
  const findings = [...groups].map(([code, members]) =>
    finding(code, severityOf(code), {
      readings: members.map((phase) => stage + phase),
      limits,
      stage,
      phases: members,
      limitOhms: limitValue('after-trip-point'),
      ...lowestOf(members.map((phase) => readings[phase])),
    }),
  );
  return { status: statusOf([...groups.keys()], tested), findings };
}

/** The lowest figure among these readings, if there is one. */
function lowestOf(readings: readonly Reading[]): Pick<StageJudged, 'lowestOhms'> {
  const values = readings.flatMap((reading) => (reading.kind === 'value' ? [reading.value] : []));
  return values.length > 0 ? { lowestOhms: Math.min(...values) } : {};
}

function severityOf(code: StageCode): Severity {
  if (code === 'stage-good') return 'pass';
  return code === 'stage-bad' ? 'fail' : 'undecided';
}

function statusOf(codes: readonly StageCode[], tested: boolean): StageStatus {
  if (codes.includes('stage-bad')) return 'bad';
  return tested && codes.every((code) => code === 'stage-good') ? 'good' : 'undecided';
}
