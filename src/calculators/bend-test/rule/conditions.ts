import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitRange } from '../../../kernel/limits.ts';
import type { BendFinding, BendInput, BendPayloads } from './input.ts';

const finding = findingMaker<BendPayloads>();

/** What was said of how the cable was joined, watched and moved. An answer that nobody knows counts as not given. */
export function judgeConditions({ end, meter, moved, loops, screen, idle }: BendInput): BendFinding[] {
  const found: BendFinding[] = [];
  const open = (code: Conditions, field: string) => found.push(finding(code, 'undecided', { readings: [field] }));
  if (end !== 'off') open(end === 'on' ? 'bend-end-on' : 'bend-end-not-stated', 'end');
  if (meter !== 'hold') open(meter === 'watched' ? 'bend-watched-by-eye' : 'bend-meter-not-stated', 'meter');
  if (moved !== 'twice') open(movedCodes[moved] ?? 'bend-moved-not-stated', 'moved');
  const isTyped = (id: 'screen' | 'brake' | 'sensor') => loops[id].highest.kind !== 'missing';
  if (screen !== 'fitted' && screen !== 'none' && !isTyped('screen')) open('bend-screen-not-stated', 'screen');
  if (!pairs.includes(idle)) open('bend-idle-not-stated', 'idle');
  return found;
}

type Conditions =
  | 'bend-end-on'
  | 'bend-end-not-stated'
  | 'bend-watched-by-eye'
  | 'bend-meter-not-stated'
  | 'bend-moved-once'
  | 'bend-moved-in-part'
  | 'bend-moved-not-stated'
  | 'bend-screen-not-stated'
  | 'bend-idle-not-stated';

const pairs: readonly BendInput['idle'][] = ['both', 'brake', 'sensor', 'none'];

const movedCodes: Partial<Record<BendInput['moved'], Conditions>> = {
  once: 'bend-moved-once',
  part: 'bend-moved-in-part',
};

/** The voltage of the test at rest, in V: less than the machine standard's shows a leak and passes nothing. */
export function judgeVoltage({ testVoltage, whileOn }: BendInput): BendFinding[] {
  const readings = ['testVoltage'];
  const { from: lowestVolts = 0 } = limitRange('test-voltage-machine-circuits');
  const found: BendFinding[] = [];
  if (whileOn !== 'at-rest') found.push(finding('bend-rest-not-stated', 'undecided', { readings: ['whileOn'] }));
  if (testVoltage.kind !== 'value') found.push(finding('test-voltage-missing', 'undecided', { readings }));
  else if (testVoltage.value < lowestVolts)
    found.push(
      finding('test-voltage-too-low', 'undecided', {
        ...{ readings, limits: ['test-voltage-machine-circuits'] },
        ...{ setVolts: testVoltage.value, lowestVolts },
      }),
    );
  return found;
}
