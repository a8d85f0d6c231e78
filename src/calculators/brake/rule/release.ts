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

/** Each leaves the coil less current. A path to PE or too much voltage is bad, and explains no brake that stays shut. */
const causes: [BrakeCause, RegExp][] = [
  ['coil', /^brake-coil-/],
  ['cores', /^brake-core(-open|s-)/],
  ['supply', /^brake-(supply-low|drop-)/],
];

/** With the voltage right at the motor a coil of too few ohms takes no less current, and the cores lose none of it. */
const causesOfFed: [BrakeCause, RegExp][] = [
  ['coil', /^brake-coil-(open|high)/],
  ['cores', /^brake-core-open/],
];

/** The first circuit that failed and explains it; the brake itself if none failed and every one passed. */
export function causeOf(judged: readonly Finding[]): BrakeCause {
  const has = (severity: string, code: RegExp) =>
    judged.some((one) => one.severity === severity && code.test(one.code));
  const fed = judged.some(({ code, readings }) => code === 'brake-supply-fits' && readings.includes('plugVolts'));
  const explained = (fed ? causesOfFed : causes).find(([, code]) => has('fail', code));
  if (explained !== undefined) return explained[0];
  if (causes.some(([, code]) => has('fail', code))) return 'unknown';
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
