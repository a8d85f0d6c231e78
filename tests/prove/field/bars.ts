import type { FieldResult } from './judge-visit.ts';
import type { FieldOutcome } from './play-field.ts';

/** Share of the visits with one of these results, 0 to 1. */
export function share(outcomes: readonly FieldOutcome[], ...results: FieldResult[]): number {
  return outcomes.filter(({ result }) => results.includes(result)).length / outcomes.length;
}

const percent = (value: number) => `${(100 * value).toFixed(1)} %`;

/** The bars that these visits miss, in words; empty if all are met. */
export function missedBars(outcomes: readonly FieldOutcome[]): string[] {
  const unsafe = outcomes.filter((outcome) => outcome.unsafe.length > 0).length;
  const right = share(outcomes, 'proven', 'concluded', 'nothing-named');
  const soundProven = share(outcomes, 'sound-proven');
  const falseNoFault = share(outcomes, 'false-no-fault');
  const byExclusion = share(outcomes, 'by-exclusion');
  const bars: [sentence: string, holds: boolean][] = [
    [`no unsafe step: ${unsafe} visits with one`, unsafe === 0],
    [`a sound part proven bad in at most 1 %: ${percent(soundProven)}`, soundProven <= 0.01],
    [`no part named by exclusion: ${percent(byExclusion)}`, byExclusion === 0],
    [`a false “no fault found” in at most 3 %: ${percent(falseNoFault)}`, falseNoFault <= 0.03],
    [`right in at least 58 %: ${percent(right)}`, right >= 0.58],
  ];
  return bars.filter(([, holds]) => !holds).map(([sentence]) => sentence);
}
