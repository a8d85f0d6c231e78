import type { TraceFigures } from './figures.ts';
import type { TripTraceFinding, TripTraceInput, Wanted, WantedColumn } from './input.ts';

/** What the rules that made no statement lacked in the file. Empty lists: it was not for the file. */
export function wantedIn(findings: readonly TripTraceFinding[], figures: TraceFigures, input: TripTraceInput): Wanted {
  const silent = (...reasons: string[]) => findings.some((one) => 'why' in one && reasons.includes(one.why));
  const needed = findings.flatMap((one) => ('needed' in one && one.needed !== undefined ? [one.needed] : []));
  const isWanted: Record<WantedColumn, boolean> = {
    'third-current': figures.measured === 2 && input.sensors !== 'two',
    bus: figures.bus === undefined,
    speed: figures.motion === undefined || !figures.speedInRpm,
    torque: figures.motion !== undefined && figures.motion.gainedAgainst === undefined,
    'after-trip': figures.tripFrom === 'file-end' && silent('trip-not-seen'),
    'as-measured': input.stored === 'filtered' && silent('filtered'),
    // Of an axis that stood still a longer one shows no more turns.
    longer: figures.motion?.speedBefore !== 0 && silent('too-little', 'few-cycles'),
  };
  return {
    columns: (Object.keys(isWanted) as WantedColumn[]).filter((one) => isWanted[one]),
    ...(needed.length > 0 && { seconds: Math.min(...needed) }),
  };
}
