import type { CaseResult } from '../../practice/words/case-result.ts';

/** The result of a set of cases in sentences; `undefined` stands for a case that has not ended. */
export function finalSummary(results: readonly (CaseResult | undefined)[]): string[] {
  const ended = results.filter((result): result is CaseResult => result !== undefined);
  if (ended.length === 0) return [];
  const cases = (count: number) => (count === 1 ? '1 case' : `${count} cases`);
  const unsafe = ended.filter((result) => result.unsafe.length > 0).length;
  const unproven = ended.filter(({ right }) => !right).length;
  const longer = ended.filter((result) => result.unnecessary.length > 0).length;
  const counted = [
    `${ended.length} of ${results.length} cases decided.`,
    unsafe > 0 ? `Unsafe in ${cases(unsafe)}. That comes before everything else.` : 'Nothing was unsafe.',
    unproven > 0 ? `Wrong, left open or not proven in ${cases(unproven)}.` : 'Each decision was right and proven.',
    longer > 0 ? `Something was unnecessary in ${cases(longer)}.` : 'Nothing was unnecessary.',
  ];
  if (ended.length < results.length) return counted;
  return [
    ...counted,
    unsafe + unproven === 0
      ? 'You decide on parts by proof, on a simulated axis. Who may do it on a machine is said by the rules of the place.'
      : 'Read the lessons that belong to these cases again, then take the other six.',
  ];
}
