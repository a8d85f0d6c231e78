import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { isOpenCircuit } from '../../../kernel/assessment/open-circuit.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { temperatureFactor } from '../../../kernel/electrics/conductor-temperature.ts';
import { coreResistance } from '../../../kernel/electrics/core-resistance.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { intervalOf, intervalShown } from '../../../kernel/reading/interval.ts';
import type {
  CoreAssessment,
  CoreFinding,
  CoreInput,
  CoreMarks,
  CorePayloads,
  CoreStepCode,
  CoreWay,
} from './input.ts';

const finding = findingMaker<CorePayloads>();

/** A contact that PE may have is a bad one in a core that carries the current of the motor. */
const contactsOf = (way: CoreWay): LimitId => (way === 'pe' ? 'pe-contacts' : 'winding-joint');

const limitsOf = (way: CoreWay): LimitId[] => [
  'pe-core-resistance',
  'pe-core-tolerance',
  contactsOf(way),
  'pe-dead-short',
];

/** The marks of one core, or of two in series. Undefined without their data. */
export function coreMarks({ way, metres, squareMillimetres }: CoreInput): CoreMarks | undefined {
  const known = metres.kind === 'value' && squareMillimetres !== undefined;
  const one = known ? coreResistance(metres.value, squareMillimetres) : undefined;
  if (one === undefined) return undefined;
  const cores = way === 'pair' ? 2 : 1;
  const warm = cores * one * (1 + limitValue('pe-core-tolerance') / 100);
  const beyond = warm + cores * limitValue('pe-dead-short');
  // A length near the largest figure that a computer knows.
  if (!Number.isFinite(beyond)) return undefined;
  return { table: cores * one, most: warm + cores * limitValue(contactsOf(way)), beyond };
}

/**
 * One core, or two in series, against what length, cross-section and contacts explain (Ω, IEC 60228, classes 5 and 6).
 * A path beside the core, such as frame, conduit or screen, only lowers the reading: until one end is off, nothing passes,
 * and what is too high still fails. Less than half of the copper alone is no pass: the current went another way, or the data
 * are those of another cable. The temperature is only shown, since the allowance covers a warm core. An impossible figure
 * (not finite, or negative) gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessCore(input: CoreInput): CoreAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return conclude(impossible);
  const { way, meter } = input;
  const marks = way === 'not-stated' ? undefined : coreMarks(input);
  const found: CoreFinding[] = [];
  if (way !== 'pe' && way !== 'core' && way !== 'pair')
    found.push(finding('core-way-not-stated', 'undecided', { readings: ['way'] }));
  if (meter !== 'continuity-tester' && meter !== 'four-leads' && meter !== 'multimeter')
    found.push(finding('core-meter-not-stated', 'undecided', { readings: ['meter'] }));
  if (input.end !== 'off') {
    const code = input.end === 'on' ? 'core-other-path-possible' : 'core-end-not-stated';
    found.push(finding(code, 'undecided', { readings: ['end'] }));
  }
  if (marks === undefined)
    found.push(finding('core-data-missing', 'undecided', { readings: ['metres', 'squareMillimetres'] }));
  found.push(...judge(input, marks), ...remarks(input, marks));
  return { ...conclude(found), ...(marks && { marks }) };
}

function judge({ way, reading, instrument, meter }: CoreInput, marks: CoreMarks | undefined): CoreFinding[] {
  const readings = ['reading'];
  const limits = limitsOf(way);
  if (reading.kind === 'missing') return [finding('core-reading-missing', 'undecided', { readings })];
  // Ranges of a milliohm meter may end below the ohms of a long core.
  const noted = reading.kind === 'over' && (reading.atLeast ?? instrument?.upperLimit) !== undefined;
  const above = marks?.beyond ?? limitValue('open-on-any-range');
  if ((noted || meter !== 'four-leads') && isOpenCircuit(reading, above, instrument))
    return [finding('core-open', 'fail', { readings, limits: [...limits, 'open-on-any-range'] })];
  if (reading.kind === 'over') return [finding('core-over-range', 'undecided', { readings })];
  if (marks === undefined) return [];
  // A coarse digit passes nothing; beyond the break the figure itself counts, as in the insulation test.
  const { lo, hi } = intervalShown(reading, instrument);
  const parts = { readings, limits, ...marks };
  if (intervalOf(reading, instrument).lo > marks.beyond) return [finding('core-too-high', 'fail', parts)];
  if (hi > marks.most) return [finding('core-above-expected', 'undecided', parts)];
  return [
    lo < marks.table / 2 ? finding('core-below-expected', 'undecided', parts) : finding('core-fits', 'pass', parts),
  ];
}

function remarks({ way, meter, temperature }: CoreInput, marks: CoreMarks | undefined): CoreFinding[] {
  const found: CoreFinding[] = [];
  const at = temperature.kind === 'value' ? temperature.value : undefined;
  const factor = at === undefined ? undefined : temperatureFactor('copper', limitValue('winding-reference-20'), at);
  if (marks !== undefined && at !== undefined && factor !== undefined) {
    const used: LimitId[] = ['winding-zero-copper'];
    const parts = { readings: ['temperature'], limits: used, ohms: marks.table * factor, celsius: at };
    found.push(finding('core-at-temperature', 'note', parts));
  }
  if (way === 'pe' && meter === 'multimeter')
    found.push(finding('core-by-multimeter', 'caution', { readings: ['meter'], limits: ['continuity-current'] }));
  return found;
}

function conclude(findings: CoreFinding[]): CoreAssessment {
  const codes = findings.flatMap(({ code }) => stepAfter[code] ?? []);
  const next: Step<CoreStepCode>[] = [...new Set(codes)].map((code) => step(code));
  return { verdict: verdictOf(findings), findings, next };
}

const stepAfter: Partial<Record<CoreFinding['code'], CoreStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'core-way-not-stated': ['state-core-way'],
  'core-meter-not-stated': ['state-core-meter'],
  'core-other-path-possible': ['take-one-end-off'],
  'core-end-not-stated': ['take-one-end-off'],
  'core-over-range': ['note-core-range'],
  'core-data-missing': ['measure-core-data'],
  'core-reading-missing': ['measure-core'],
  'core-open': ['clean-and-repeat', 'divide-the-run'],
  'core-too-high': ['clean-and-repeat', 'divide-the-run'],
  'core-above-expected': ['clean-and-repeat'],
  'core-below-expected': ['look-for-other-path'],
  'core-by-multimeter': ['use-continuity-tester'],
};
