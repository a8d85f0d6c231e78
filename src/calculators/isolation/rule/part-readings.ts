import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { type Grounds, type MoreEvidence, type SeparatePart, type Standing, standingOf } from './conviction.ts';
import type { IsolationFinding } from './input.ts';
import type { StageReadingJudgement, StageStatus } from './stage.ts';

/** What the readings of cable or motor alone show. */
export interface PartReadings {
  status: StageStatus;
  /** Something bad stands against it; readings of a doubtful hook-up count too. */
  showsBad: boolean;
  /** Nothing stands against it any more: good, or good again once it was dry, or as low as its length allows. */
  cleared: boolean;
  convicted: boolean;
  findings: IsolationFinding[];
}

export const notTaken: PartReadings = {
  status: 'not-taken',
  showsBad: false,
  cleared: false,
  convicted: false,
  findings: [],
};

export type Judge = (reading: Reading) => StageReadingJudgement;

/** The lowest of these readings by the most that it can be; everything if none was taken. */
export function lowestOf(readings: readonly Reading[], instrument: Instrument): Interval {
  const taken = readings.filter(({ kind }) => kind !== 'missing').map((reading) => intervalOf(reading, instrument));
  return taken.sort((a, b) => a.hi - b.hi)[0] ?? { lo: 0, hi: Number.POSITIVE_INFINITY };
}

/** The part with its second reading, if it fails or the second reading does. */
export function withSecond(
  part: SeparatePart,
  taken: PartReadings,
  lowest: Interval,
  more: MoreEvidence = {},
  {
    judge,
    instrument,
    tested,
    complete,
    grounds,
  }: { judge: Judge; instrument: Instrument; tested: boolean; complete: boolean; grounds: Grounds },
): PartReadings {
  const { again = missing, dried, sister = missing } = more;
  const second =
    again.kind === 'missing'
      ? undefined
      : { reading: intervalOf(again, instrument), judgement: secondJudgement(judge(again), tested) };
  // A good second reading clears what was undecided too: otherwise a worse first reading would stand better.
  const cleared = taken.cleared || (complete && second?.judgement === 'good');
  if (!taken.showsBad && second?.judgement !== 'bad') return { ...taken, cleared };
  const evidence = { dried, sister: sister.kind === 'missing' ? undefined : intervalOf(sister, instrument) };
  const { standing, findings } = standingOf(part, lowest, second, evidence, grounds);
  return { ...taken, ...consequences[standing]({ ...taken, cleared }), findings: [...taken.findings, ...findings] };
}

function secondJudgement(judgement: StageReadingJudgement, tested: boolean): 'good' | 'bad' | 'unclear' {
  if (judgement === 'good') return tested ? 'good' : 'unclear';
  return judgement === 'bad' ? 'bad' : 'unclear';
}

type Consequence = Pick<PartReadings, 'status' | 'showsBad' | 'cleared' | 'convicted'>;

/** An undecided hook-up stays undecided: only what was measured free of doubt convicts. */
const consequences: Record<Standing, (taken: PartReadings) => Consequence> = {
  convicted: ({ status }) => ({
    status: status === 'undecided' ? status : 'bad',
    showsBad: true,
    cleared: false,
    convicted: status === 'bad',
  }),
  suspect: ({ status, showsBad }) => ({
    status: status === 'undecided' && showsBad ? status : 'bad',
    showsBad: true,
    cleared: false,
    convicted: false,
  }),
  lifted: ({ cleared }) => ({ status: 'undecided', showsBad: false, cleared, convicted: false }),
};
