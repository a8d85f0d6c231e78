import { type FindingOf, findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

export type SeparatePart = 'cable' | 'motor';

/**
 * More evidence about a part that fails alone. `again`: its lowest terminal once more, after the leads were off.
 * `dried`: it was cleaned and dried before that. `sister`: its own reading from before the trip, or that of a sound part
 * of the same kind, in Ω.
 */
export interface MoreEvidence {
  again?: Reading;
  dried?: 'yes' | 'no';
  sister?: Reading;
}

/** What convicts a part that was read twice. */
export type Ground = 'short-twice' | 'below-minimum' | 'far-below-own';

interface OfPart {
  part: SeparatePart;
}

export interface ConvictionPayloads {
  /** `lacks`: the evidence that would convict or clear it. */
  'part-suspect': OfPart & { lacks: 'second-reading' | 'drying' | 'comparison' };
  'part-convicted': OfPart & { ground: Ground; limitOhms: number };
  'again-bad': OfPart & { limitOhms: number };
  'again-unclear': OfPart;
  'dried-and-good': OfPart;
}

export type ConvictionFinding = FindingOf<ConvictionPayloads>;

const finding = findingMaker<ConvictionPayloads>();

/** What two readings of a part are compared with. Each test is certain: accuracy, bounds and temperature included. */
export interface Grounds {
  /** Below the published minimum at every valid correction. */
  belowMinimum: (reading: Interval) => boolean;
  minimum: { ohms: number; limits: LimitId[] };
  /** The highest that the reading can be, as read or at the reference temperature, in Ω. */
  most: (reading: Interval) => number;
}

/** `lifted`: the second reading is good, so that water or dirt was the cause. */
export type Standing = 'convicted' | 'suspect' | 'lifted';

/**
 * Whether a part that fails the after-trip limit is proven bad. `lowest`: its lowest reading; `again` with its
 * judgement against the point. A short read twice needs no drying; everything else may be water or dirt, so both
 * readings count only if the second one was taken clean and dry.
 */
export function standingOf(
  part: SeparatePart,
  lowest: Interval,
  again: { reading: Interval; judgement: 'good' | 'bad' | 'unclear' } | undefined,
  { dried, sister }: { dried: MoreEvidence['dried']; sister: Interval | undefined },
  grounds: Grounds,
): { standing: Standing; findings: ConvictionFinding[] } {
  const point: LimitId[] = ['after-trip-point'];
  const readings = [`${part}Again`];
  if (again === undefined || again.judgement === 'unclear') {
    const unclear = again === undefined ? [] : [finding('again-unclear', 'undecided', { readings, part })];
    const lacks = 'second-reading';
    return { standing: 'suspect', findings: [...unclear, finding('part-suspect', 'caution', { part, lacks })] };
  }
  if (again.judgement === 'good') {
    return {
      standing: 'lifted',
      findings: [finding('dried-and-good', 'undecided', { readings, limits: point, part })],
    };
  }
  const bad = finding('again-bad', 'fail', {
    readings,
    limits: point,
    part,
    limitOhms: limitValue('after-trip-point'),
  });
  const both = (test: (reading: Interval) => boolean) => test(lowest) && test(again.reading);
  const short = limitValue('short-beyond-moisture');
  const convicted = (ground: Ground, limitOhms: number, limits: LimitId[]) => ({
    standing: 'convicted' as const,
    findings: [bad, finding('part-convicted', 'note', { readings, limits, part, ground, limitOhms })],
  });
  if (both(({ hi }) => hi < short)) return convicted('short-twice', short, ['short-beyond-moisture']);
  if (dried !== 'yes') {
    return { standing: 'suspect', findings: [bad, finding('part-suspect', 'caution', { part, lacks: 'drying' })] };
  }
  const { minimum } = grounds;
  const own = sister?.lo ?? 0;
  const times = limitValue('far-below-own');
  // Above what the machine needs, a part that reads as it always did is not condemned by a minimum.
  const isAsBefore =
    grounds.most(again.reading) * times > own && again.reading.hi >= limitValue('machine-minimum-60204');
  const unchanged = sister !== undefined && isAsBefore;
  if (!unchanged && both(grounds.belowMinimum)) return convicted('below-minimum', minimum.ohms, minimum.limits);
  if (both((reading) => grounds.most(reading) * times <= own)) {
    return convicted('far-below-own', own / times, ['far-below-own']);
  }
  return { standing: 'suspect', findings: [bad, finding('part-suspect', 'caution', { part, lacks: 'comparison' })] };
}
