import { type Finding, type FindingOf, findingMaker, type Nothing } from '../../../kernel/assessment/assessment.ts';

/** What the brake did when the control released it, by ear and by the current or the turning of the motor. */
export type BrakeRelease = 'opens' | 'drags' | 'shut' | 'not-tried';

/** What explains a brake that stays shut or drags; `brake` only if coil, cores and supply were measured and pass. */
export type BrakeCause = 'coil' | 'cores' | 'supply' | 'brake' | 'unknown';

export interface ReleasePayloads {
  'brake-opens': Nothing;
  'brake-stays-shut': { cause: BrakeCause };
  'brake-drags': { cause: BrakeCause };
  'brake-release-not-tried': Nothing;
}

const finding = findingMaker<ReleasePayloads>();

const causes: [BrakeCause, RegExp][] = [
  ['coil', /^brake-coil-/],
  // A path to PE or too much voltage is bad, and explains no brake that stays shut.
  ['cores', /^brake-core(-open|s-)/],
  ['supply', /^brake-(supply-low|drop-)/],
];

/** The first circuit that failed; the brake itself if every one of them passed. */
export function causeOf(judged: readonly Finding[]): BrakeCause {
  const has = (severity: string, code: RegExp) =>
    judged.some((one) => one.severity === severity && code.test(one.code));
  const failed = causes.find(([, code]) => has('fail', code));
  if (failed !== undefined) return failed[0];
  const passed = ['brake-coil-fits', 'brake-cores-free', 'brake-supply-fits'].every((code) =>
    judged.some((one) => one.code === code),
  );
  const open = judged.some(({ severity }) => severity === 'undecided');
  return passed && !open ? 'brake' : 'unknown';
}

export function judgeRelease(release: BrakeRelease, judged: readonly Finding[]): FindingOf<ReleasePayloads> {
  const readings = ['release'];
  if (release === 'opens') return finding('brake-opens', 'pass', { readings });
  if (release === 'shut') return finding('brake-stays-shut', 'fail', { readings, cause: causeOf(judged) });
  if (release === 'drags') return finding('brake-drags', 'fail', { readings, cause: causeOf(judged) });
  return finding('brake-release-not-tried', 'undecided', { readings });
}
