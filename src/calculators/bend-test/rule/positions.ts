import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type Phase, phases } from '../../../kernel/electrics/phases.ts';
import { limitRange, limitValue } from '../../../kernel/limits.ts';
import { intervalShown } from '../../../kernel/reading/interval.ts';
import type { BendFinding, BendInput, BendPayloads } from './input.ts';

const finding = findingMaker<BendPayloads>();

/** Readings of each core in each position, and what they say of the cable. */
export interface Positions {
  findings: BendFinding[];
  leaks: boolean;
  /** The same core leaks in one position twice, and is good in another. */
  proven: boolean;
}

interface Place {
  /** From 1. */
  place: number;
  core: Phase;
  lo: number;
  hi: number;
}

/**
 * Insulation at rest, position by position, in Ω. Below the minimum of the machine standard a core leaks; the after-trip
 * limit passes; between the two its length may explain it, which the page for cable and motor judges.
 */
export function judgePositions(input: BendInput): Positions {
  const leastOhms = limitValue('machine-minimum-60204');
  const wantedOhms = limitValue('after-trip-point');
  const wanted = limitRange('bend-positions').from;
  const typed = input.positions.map((row, index) => ({
    place: index + 1,
    read: phases.filter((core) => row[core].kind !== 'missing'),
  }));
  const whole = typed.filter(({ read }) => read.length === phases.length).length;
  const broken = typed.filter(({ read }) => read.length > 0 && read.length < phases.length).map(({ place }) => place);
  const all: Place[] = typed.flatMap(({ place, read }) =>
    read.map((core) => ({ place, core, ...shownAt(input, place, core) })),
  );
  const findings: BendFinding[] = [];
  if (broken.length > 0) findings.push(finding('bend-positions-incomplete', 'undecided', { places: broken }));
  if (whole < wanted)
    findings.push(finding('bend-positions-missing', 'undecided', { limits: ['bend-positions'], whole, wanted }));
  const leaking = all.filter(({ hi }) => hi < leastOhms);
  const repeats = phases.filter((core) => {
    const once = input.badAgain[core];
    return once.kind !== 'missing' && intervalShown(once).hi < leastOhms;
  });
  const cores = coresOf(leaking);
  // Gone in another position: then it comes with the bend.
  const comes = cores.filter((core) => all.some((one) => one.core === core && one.lo >= wantedOhms));
  const proven = input.end === 'off' ? comes.filter((core) => repeats.includes(core)) : [];
  const lasting = cores.filter((core) => !comes.includes(core));
  const limits = ['machine-minimum-60204', 'after-trip-point'] as const;
  if (proven.length > 0) {
    const at = leaking.filter(({ core }) => proven.includes(core));
    findings.push(
      finding('bend-leak-proven', 'fail', {
        ...{ readings: [...namesOf(at), ...proven.map((core) => `badAgain${core}`)], limits: [...limits] },
        ...{ cores: proven, places: placesOf(at) },
      }),
    );
  }
  const once = leaking.filter(({ core }) => comes.includes(core) && !proven.includes(core));
  if (once.length > 0)
    findings.push(
      finding('bend-leaks', 'fail', {
        ...{ readings: namesOf(once), limits: [...limits] },
        ...{ cores: coresOf(once), places: placesOf(once), leastOhms },
      }),
    );
  if (lasting.length > 0)
    findings.push(
      finding('bend-leaks-everywhere', 'fail', {
        ...{ readings: namesOf(leaking.filter(({ core }) => lasting.includes(core))), limits: [...limits] },
        ...{ cores: lasting, leastOhms },
      }),
    );
  const low = all.filter(({ lo, hi }) => hi >= leastOhms && lo < wantedOhms);
  if (low.length > 0)
    findings.push(
      finding('bend-insulation-low', 'undecided', {
        ...{ readings: namesOf(low), limits: [...limits] },
        ...{ cores: coresOf(low), places: placesOf(low), wantedOhms },
      }),
    );
  const unrepeated = repeats.filter((core) => !proven.includes(core));
  if (findings.length === 0 && unrepeated.length === 0)
    findings.push(
      finding('bend-positions-hold', 'pass', { limits: ['after-trip-point', 'bend-positions'], whole, wantedOhms }),
    );
  // A row that says "leaked again" beside positions that all hold.
  else if (leaking.length === 0 && unrepeated.length > 0)
    findings.push(
      finding('bend-leaks', 'fail', {
        ...{ readings: unrepeated.map((core) => `badAgain${core}`), limits: [...limits] },
        ...{ cores: unrepeated, places: [], leastOhms },
      }),
    );
  return { findings, leaks: leaking.length > 0 || unrepeated.length > 0, proven: proven.length > 0 };
}

function shownAt({ positions }: BendInput, place: number, core: Phase): { lo: number; hi: number } {
  const row = positions[place - 1];
  return row === undefined ? { lo: 0, hi: Number.POSITIVE_INFINITY } : intervalShown(row[core]);
}

const coresOf = (some: readonly Place[]): Phase[] => phases.filter((core) => some.some((one) => one.core === core));
const placesOf = (some: readonly Place[]): number[] => [...new Set(some.map(({ place }) => place))];
const namesOf = (some: readonly Place[]): string[] => some.map(({ place, core }) => `P${place}${core}`);
