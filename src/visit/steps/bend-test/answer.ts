import type { BendAssessment, BendFinding, BentCore, LoopId } from '../../../calculators/bend-test/rule/input.ts';
import type { Outcome } from '../../../kernel/form/calculator-form.ts';
import { choice, chosen, type Form, remark, tick, ticked } from '../fields.ts';
import { lineOf } from '../question.ts';

/**
 * What the guide knows of the test. `core`: the core that opens or leaks. `again`: shown by a second movement that does
 * not rest on the first; `steady` of the whole way, twice. `undecided`: what was read decides nothing.
 */
export interface BendTestAnswer {
  result: 'steady' | 'opens' | 'leaks' | 'undecided' | 'not-done';
  core?: 'power' | 'PE' | 'screen' | 'idle' | 'feedback';
  again: boolean;
  /** Absent in a record without readings. */
  assessment?: BendAssessment;
  /** The person goes on without a decision. */
  leftOpen?: boolean;
}

/** Before the readings were asked for, the person said what the cable showed. Records that do keep their answer. */
const result = choice<Exclude<BendTestAnswer['result'], 'undecided'>>('result', 'What did the cable show?', {
  steady: 'Every core stayed steady',
  opens: 'A core opened, or its resistance jumped',
  leaks: 'A core leaked in one position',
  'not-done': 'Not done',
});
const core = choice<NonNullable<BendTestAnswer['core']>>('core', 'Which core?', {
  power: 'U, V or W',
  PE: 'PE',
  screen: 'The screen',
  idle: 'Brake or sensor',
  feedback: 'Feedback',
});
const again = tick('again', 'I did it a second time, the plugs held still, and it was the same.', 'seen twice');

/** Fields that only older records hold. */
export const olderFields = [result, core, again, remark];

/** What an older record says, in one line; empty if it says nothing. */
export function olderLine(form: Form): string {
  return lineOf(olderFields)(form, {});
}

function olderAnswer(form: Form): BendTestAnswer | undefined {
  const found = chosen(form, result);
  const which = chosen(form, core);
  if (found === undefined) return undefined;
  const bad = found === 'opens' || found === 'leaks';
  // A fault without its core could be of either cable.
  if (bad && which === undefined) return undefined;
  return { result: found, ...(bad && which !== undefined && { core: which }), again: ticked(form, 'again') };
}

/** The guide's answer from the calculator's outcome; from what an older record says if nothing was read. */
export function bendAnswer(form: Form, outcome: Outcome): BendTestAnswer | undefined {
  const leftOpen = ticked(form, 'leftOpen');
  const older = olderAnswer(form);
  if (outcome.state === 'judged') {
    const read = { ...answerOf(outcome.assessment as BendAssessment), leftOpen };
    // What was seen before is neither cleared by a quiet test nor weakened by a fault that was read once.
    const stands = isBad(older) && (!isBad(read) || (older?.again === true && !read.again));
    return stands ? { ...read, ...older } : read;
  }
  if (outcome.state !== 'blank') return undefined;
  return older ?? (leftOpen ? { result: 'not-done', again: false } : undefined);
}

const isBad = (one: BendTestAnswer | undefined) => one?.result === 'opens' || one?.result === 'leaks';

/** What the readings say of the two cables. A core that is proven goes before one that is suspect. */
export function answerOf(assessment: BendAssessment): BendTestAnswer {
  const { verdict, findings } = assessment;
  const bad = findings
    .filter(({ severity, code }) => severity === 'fail' && !atRest.includes(code))
    .sort((a, b) => rank(a) - rank(b))[0];
  const quiet = verdict === 'go';
  if (bad === undefined) return { result: quiet ? 'steady' : 'undecided', again: quiet, assessment };
  const leaks = /^bend-leak/.test(bad.code);
  return { result: leaks ? 'leaks' : 'opens', core: coreOf(bad), again: rank(bad) === 0, assessment };
}

/** No matter of bending: the steps that measure at rest judge it. */
const atRest: readonly BendFinding['code'][] = ['bend-open-at-rest', 'bend-leaks-everywhere'];

const rank = ({ code }: BendFinding) => (code.endsWith('-proven') ? 0 : 1);

function coreOf(finding: BendFinding): NonNullable<BendTestAnswer['core']> {
  switch (finding.code) {
    case 'bend-core-proven':
      return groupOf(finding.cores[0]);
    case 'bend-jumps':
      return groupOf(finding.cores[0] ?? finding.loops[0]);
    case 'bend-joint-jumps':
      return groupOf(finding.loops[0]);
    default:
      return 'power';
  }
}

function groupOf(one: BentCore | LoopId | undefined): NonNullable<BendTestAnswer['core']> {
  if (one === 'brake' || one === 'sensor') return 'idle';
  return one === 'PE' || one === 'screen' || one === 'feedback' ? one : 'power';
}
