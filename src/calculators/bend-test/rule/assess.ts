import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { type LimitId, limitRange } from '../../../kernel/limits.ts';
import { judgeConditions, judgeVoltage } from './conditions.ts';
import { coresThatJump, judgeRest } from './cores.ts';
import {
  type BendAssessment,
  type BendFinding,
  type BendInput,
  type BendPayloads,
  type BendStepCode,
  type BentPart,
  type LoopId,
  loopIds,
  powerLoops,
  type SweepState,
} from './input.ts';
import { judgePositions, type Positions } from './positions.ts';
import { judgeLoops, loopsWith } from './sweep.ts';

const finding = findingMaker<BendPayloads>();

type States = Record<LoopId, SweepState>;

const unmeasured = Object.fromEntries(loopIds.map((id) => [id, 'missing'])) as States;
const unknown: BendAssessment['parts'] = { cable: 'open', feedbackCable: 'open' };

/**
 * A cable that is off at both ends, its cores joined at the far end: each loop at rest and the extremes that the meter
 * held while the cable was moved (Ω, below 25 V), then the insulation at rest in several positions (Ω at 500 V). Two
 * movements that do not rest on each other convict; one makes the cable suspect. A test voltage on a cable that moves
 * stops everything. A go says that this test found nothing: a hold misses what is short. An impossible figure (not finite,
 * or negative) gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessBendTest(input: BendInput): BendAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return conclude(impossible, unmeasured, unknown, []);
  const dangers: BendFinding[] = [];
  if (input.meter === 'tester') dangers.push(finding('bend-tester-while-moved', 'stop', { readings: ['meter'] }));
  if (input.whileOn === 'moved') dangers.push(finding('bend-moved-under-voltage', 'stop', { readings: ['whileOn'] }));
  if (dangers.length > 0) return conclude(dangers, unmeasured, unknown, []);
  const first = judgeLoops(input.loops);
  const again = judgeLoops(input.again);
  const positions = judgePositions(input);
  const jumps = judgeJumps(input, first, again);
  const wanted = wantedLoops(input);
  const absent = wanted.filter((id) => first[id] === 'missing');
  const found = [
    ...judgeConditions(input),
    ...(absent.length > 0
      ? [finding('bend-loops-missing', 'undecided', { readings: absent.map((id) => `${id}High`), loops: absent })]
      : []),
    ...troubles(first, false),
    ...troubles(again, true),
    ...judgeRest(input, first),
    ...jumps,
  ];
  if (wanted.every((id) => first[id] === 'steady') && jumps.length === 0) {
    const loops = loopsWith(first, 'steady');
    found.push(finding('bend-loops-steady', 'pass', { readings: names(loops, false), limits: ['bend-noise'], loops }));
  }
  const { from = 0, to = 0 } = limitRange('bend-hold-time');
  found.push(finding('bend-hold-misses', 'note', { limits: ['bend-hold-time'], from, to }));
  if (first.feedback === 'missing')
    found.push(finding('bend-feedback-not-watched', 'note', { readings: ['feedbackHigh'] }));
  found.push(...positions.findings, ...judgeVoltage(input));
  return conclude(found, first, partsOf(found, first, positions), repeatOf(first, again, jumps));
}

/** The loops that a pass needs. A loop that is typed counts, whatever is said of the cable. */
function wantedLoops({ screen, idle }: BendInput): LoopId[] {
  return [
    ...powerLoops,
    'PE',
    ...(screen === 'fitted' ? (['screen'] as const) : []),
    ...(['brake', 'sensor'] as const).filter((pair) => idle === pair || idle === 'both'),
  ];
}

const names = (loops: readonly LoopId[], again: boolean) => loops.map((id) => `${id}High${again ? '2' : ''}`);

const noise: LimitId[] = ['bend-noise'];

/** What keeps a movement from saying anything. */
function troubles(states: States, again: boolean): BendFinding[] {
  const rows = [
    ['open-at-rest', 'bend-open-at-rest', 'fail', ['open-on-any-range']],
    ['incomplete', 'bend-loops-incomplete', 'undecided', []],
    ['tips-moved', 'bend-tips-moved', 'undecided', noise],
    ['over-range', 'bend-over-range', 'undecided', []],
    ['contradicts', 'bend-contradicts', 'undecided', noise],
    ['dips', 'bend-dips', 'undecided', noise],
    ['unclear', 'bend-unclear', 'undecided', ['bend-noise', 'bend-jump']],
  ] as const;
  return rows.flatMap(([state, code, severity, limits]) => {
    const loops = loopsWith(states, state);
    const readings = names(loops, again);
    return loops.length === 0 ? [] : [finding(code, severity, { readings, limits: [...limits], loops, again })];
  });
}

/** What jumped, and whether a second movement shows the same core. */
function judgeJumps(input: BendInput, first: States, again: States): BendFinding[] {
  const { movedAgain } = input;
  const limits: LimitId[] = ['bend-jump'];
  const once = loopsWith(first, 'jumps');
  const twice = loopsWith(again, 'jumps');
  // A plugged connector that is moved alone: its contact, or the motor's half.
  if (movedAgain === 'mated' && once.length === 0 && twice.length > 0) {
    return [finding('bend-joint-jumps', 'fail', { readings: names(twice, true), limits, loops: twice })];
  }
  const named = coresThatJump(first);
  const same = coresThatJump({ ...quietBefore(first), ...measured(again) }).filter((core) => named.includes(core));
  if (same.length > 0 && isAlone(input) && (movedAgain === 'cable' || movedAgain === 'half')) {
    const readings = [...names(once, false), ...names(twice, true)];
    return [finding('bend-core-proven', 'fail', { readings, limits, cores: same, place: movedAgain })];
  }
  const found: BendFinding[] = [];
  if (once.length > 0)
    found.push(
      finding('bend-jumps', 'fail', { readings: names(once, false), limits, loops: once, again: false, cores: named }),
    );
  if (twice.length > 0)
    found.push(
      finding('bend-jumps', 'fail', {
        ...{ readings: names(twice, true), limits, loops: twice, again: true },
        cores: coresThatJump(again),
      }),
    );
  return found;
}

/** Nothing but the cable lay between the tips, and they were those of a meter below 25 V. */
const isAlone = ({ end, meter }: BendInput) => end === 'off' && (meter === 'hold' || meter === 'watched');

/** Loops that a second movement need not repeat, since they were steady in the first. */
const quietBefore = (first: States): States =>
  Object.fromEntries(loopIds.map((id) => [id, first[id] === 'steady' ? 'steady' : 'missing'])) as States;

const measured = (states: States): Partial<States> =>
  Object.fromEntries(loopIds.flatMap((id) => (states[id] === 'missing' ? [] : [[id, states[id]]])));

function partsOf(found: readonly BendFinding[], first: States, { leaks, proven }: Positions): BendAssessment['parts'] {
  const bad = found.flatMap((one) => (one.code === 'bend-core-proven' ? one.cores : []));
  const seen = found.flatMap((one) => (one.code === 'bend-jumps' || one.code === 'bend-open-at-rest' ? one.loops : []));
  const joint = found.some(({ code }) => code === 'bend-joint-jumps');
  const ofFeedback = (): BentPart => {
    if (bad.includes('feedback')) return 'proven-bad';
    if (seen.includes('feedback')) return 'suspect';
    return first.feedback === 'steady' ? 'steady' : 'open';
  };
  const ofCable = (): BentPart => {
    if (proven || bad.some((core) => core !== 'feedback')) return 'proven-bad';
    if (leaks || seen.some((id) => id !== 'feedback')) return 'suspect';
    return verdictOf(found) === 'go' && !joint ? 'steady' : 'open';
  };
  return { cable: ofCable(), feedbackCable: ofFeedback() };
}

/** All three power loops if one of them jumps: the third tells which core it is. */
function repeatOf(first: States, again: States, jumps: readonly BendFinding[]): LoopId[] {
  if (jumps.length === 0) return [];
  const odd = loopIds.filter((id) => first[id] === 'jumps' || again[id] !== 'missing');
  const power = powerLoops.some((id) => odd.includes(id));
  return loopIds.filter((id) => odd.includes(id) || (power && powerLoops.some((one) => one === id)));
}

function conclude(
  findings: BendFinding[],
  loops: States,
  parts: BendAssessment['parts'],
  repeat: LoopId[],
): BendAssessment {
  const codes = findings.flatMap((one) => [
    ...(stepAfter[one.code] ?? []),
    // In a second movement the row itself is the repetition.
    ...(one.code === 'bend-jumps' ? [one.again ? ('clip-and-repeat' as const) : ('move-again' as const)] : []),
  ]);
  const next: Step<BendStepCode>[] = [...new Set(codes)].map((code) => step(code));
  return { verdict: verdictOf(findings), findings, next, parts, loops, repeat };
}

const stepAfter: Partial<Record<BendFinding['code'], BendStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'bend-tester-while-moved': ['use-low-voltage-meter'],
  'bend-moved-under-voltage': ['fix-before-test'],
  'bend-end-on': ['free-both-ends'],
  'bend-end-not-stated': ['free-both-ends'],
  'bend-watched-by-eye': ['use-hold'],
  'bend-meter-not-stated': ['use-hold'],
  'bend-moved-once': ['move-whole-way'],
  'bend-moved-in-part': ['move-whole-way'],
  'bend-moved-not-stated': ['move-whole-way'],
  'bend-screen-not-stated': ['say-which-cores'],
  'bend-idle-not-stated': ['say-which-cores'],
  'bend-loops-missing': ['watch-loops'],
  'bend-loops-incomplete': ['read-at-rest-twice'],
  'bend-open-at-rest': ['join-far-end'],
  'bend-tips-moved': ['clip-and-repeat'],
  'bend-over-range': ['note-bend-range'],
  'bend-contradicts': ['clip-and-repeat'],
  'bend-dips': ['clip-and-repeat'],
  'bend-unclear': ['clip-and-repeat'],
  'bend-rest-odd': ['look-at-rest-first'],
  'bend-cores-uneven': ['look-at-rest-first'],
  'bend-core-proven': ['replace-bent-cable'],
  'bend-joint-jumps': ['look-into-joint'],
  'bend-rest-not-stated': ['fix-before-test'],
  'bend-positions-missing': ['test-in-positions'],
  'bend-positions-incomplete': ['test-in-positions'],
  'test-voltage-missing': ['set-500-volts'],
  'test-voltage-too-low': ['set-500-volts'],
  'bend-leaks': ['bend-once-more'],
  'bend-leaks-everywhere': ['separate-first'],
  'bend-leak-proven': ['replace-bent-cable'],
  'bend-insulation-low': ['separate-first'],
};
