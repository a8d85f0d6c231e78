import {
  type Assessment,
  type FindingOf,
  findingMaker,
  type Nothing,
  type Step,
  step,
  verdictOf,
} from '../../../kernel/assessment/assessment.ts';
import {
  type FigurePayloads,
  type FigureStepCode,
  impossibleFigures,
} from '../../../kernel/assessment/possible-figures.ts';
import type { Conductor } from '../../../kernel/electrics/conductor-temperature.ts';
import type { LimitId } from '../../../kernel/limits.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { type AgainPayloads, againFindings, compareSets } from './again.ts';
import type { BalancePayloads } from './balance.ts';
import { causeOf, type WindingCause } from './cause.ts';
import { type JointPayloads, type JointState, jointFindings, judgeJoint } from './joint.ts';
import type { LeadHandling, LeadPayloads } from './leads.ts';
import type { OpenPayloads } from './open.ts';
import { windingPairs } from './pairs.ts';
import type { Pairs } from './phases.ts';
import { type CorrectTo, compareWithReference, correctedFinding, type ReferencePayloads } from './reference.ts';
import { judgeSet, type WindingSet } from './set.ts';
import { type Connection, phaseValues, type SuspectPayloads, suspects } from './suspect.ts';

/**
 * Line-to-line resistances in Ω, as the meter showed them; `instrument` describes the meter. What is left out is
 * unknown: without a statement of the leads nothing passes, an unknown connection is answered for star and delta,
 * without a winding temperature (°C) nothing is corrected, and without a nameplate or earlier value (Ω line to line,
 * with its temperature) nothing is compared.
 */
export interface WindingInput {
  readings: Pairs<Reading>;
  /** The same three once more, terminals cleaned and tips put on again. All missing counts as not taken. */
  again?: Pairs<Reading>;
  /** Across the mated connector of the odd lead, in Ω. */
  acrossJoint?: Reading;
  instrument?: Instrument;
  leads?: LeadHandling;
  /** The tips held together, in Ω. */
  leadOhms?: Reading;
  kind?: 'random-wound' | 'form-wound';
  connection?: Connection;
  conductor?: Conductor;
  temperature?: Reading;
  correctTo?: CorrectTo;
  reference?: Reading;
  referenceTemperature?: Reading;
}

interface WindingPayloads
  extends FigurePayloads,
    OpenPayloads,
    BalancePayloads,
    LeadPayloads,
    AgainPayloads,
    JointPayloads,
    ReferencePayloads,
    SuspectPayloads {
  'winding-contact-possible': Nothing;
  'winding-passed': Nothing;
  'winding-failed': Nothing;
}

export type WindingFinding = FindingOf<WindingPayloads>;

const finding = findingMaker<WindingPayloads>();

export type WindingStepCode =
  | FigureStepCode
  | 'measure-pairs'
  | 'note-winding-range'
  | 'use-milliohm-meter'
  | 'use-four-leads'
  | 'state-leads'
  | 'read-leads-together'
  | 'repeat-pair'
  | 'read-pairs-again'
  | 'find-contact'
  | 'mend-joint'
  | 'note-temperatures'
  | 'compare-at-motor'
  | 'measure-at-motor'
  | 'ask-for-surge-test';

export interface WindingAssessment extends Assessment<WindingFinding, Step<WindingStepCode>> {
  cause: WindingCause;
  joint: JointState;
}

/**
 * Whether the three windings are alike: the largest deviation from the mean (arithmetic of NEMA MG 1) passes up to one
 * published limit, fails above another, and is undecided between them. An open winding fails. One step of the display
 * always counts as error, because servo windings read fractions of an ohm and a multimeter shows few digits of it. A
 * second set that passes where the first fails, or the other way round, makes it undecided. An impossible figure (not
 * finite, or negative where it can't be) gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessWinding(input: WindingInput): WindingAssessment {
  const impossible = impossibleFigures(input);
  if (impossible.length > 0) return conclude(impossible, 'open', 'not-measured');
  const { readings, again, acrossJoint = missing, instrument = {}, leads = 'not-stated', leadOhms = missing } = input;
  const meter = { ...instrument, counts: Math.max(1, instrument.counts ?? 0) };
  const goodLimit: LimitId = input.kind === 'form-wound' ? 'winding-unbalance-good-form' : 'winding-unbalance-good';
  const judge = (set: Pairs<Reading>) => judgeSet(set, { leads, leadOhms, meter, goodLimit });
  const first = judge(readings);
  const taken = again !== undefined && windingPairs.some((pair) => again[pair].kind !== 'missing');
  const state = compareSets(first, taken ? judge(again) : undefined, leads !== 'four');
  // A lead that has read alike since has nothing in excess that the joint would explain.
  const odd: WindingSet = state === 'passes' ? { ...first, verdict: 'undecided' } : first;
  const joint = judgeJoint(acrossJoint, meter, leads === 'four', odd);
  const cause = causeOf(first, state, joint, leads);
  const findings: WindingFinding[] = [
    ...(state === 'passes' ? first.findings.map(doubted) : first.findings),
    ...details(input, first),
    ...againFindings(state, first.verdict),
    ...jointFindings(joint, odd),
  ];
  if (state === 'confirms' && cause === 'open' && first.verdict === 'no-go')
    findings.push(finding('winding-contact-possible', 'note', { limits: ['winding-two-lead-contact'] }));
  return conclude(findings, cause, joint);
}

/** A second set has passed since. */
function doubted<F extends WindingFinding>(one: F): F {
  return one.severity === 'fail' ? { ...one, severity: 'undecided' } : one;
}

/** What three finite readings show besides: each winding by itself, temperature, comparison. */
function details(input: WindingInput, { finite, findings }: WindingSet): WindingFinding[] {
  if (finite === undefined) return [];
  const { connection = 'unknown', conductor = 'copper', temperature = missing } = input;
  const { intervals, leads, lines, net } = finite;
  const found: WindingFinding[] = [];
  const unlike = findings.some(({ code }) => code === 'winding-unbalanced' || code === 'winding-between-limits');
  if (unlike) found.push(...suspects(lines, connection));
  if (net !== undefined) {
    found.push(...phaseValues(net, connection));
    found.push(...correctedFinding(net, temperature, conductor, input.correctTo ?? 'to-20'));
  }
  const mean = {
    lo: windingPairs.reduce((sum, pair) => sum + Math.max(0, intervals[pair].lo - leads.interval.hi), 0) / 3,
    hi: windingPairs.reduce((sum, pair) => sum + Math.max(0, intervals[pair].hi - leads.interval.lo), 0) / 3,
  };
  const { reference = missing, referenceTemperature = missing } = input;
  found.push(...compareWithReference({ mean, temperature, conductor, reference, referenceTemperature }));
  return found;
}

const stepAfter: Partial<Record<WindingFinding['code'], WindingStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'winding-incomplete': ['measure-pairs'],
  'winding-range-not-noted': ['note-winding-range'],
  'winding-open-alone': ['repeat-pair'],
  'winding-sum-of-others': ['repeat-pair'],
  'winding-more-than-others': ['repeat-pair'],
  'winding-not-confirmed': ['read-pairs-again'],
  'winding-again-passes': ['find-contact'],
  'winding-again-fails': ['find-contact'],
  'winding-again-differs': ['find-contact'],
  'winding-again-unclear': ['read-pairs-again'],
  'winding-contact-possible': ['use-four-leads'],
  'winding-joint-bad': ['mend-joint'],
  'winding-joint-unclear': ['use-four-leads'],
  'winding-leads-not-stated': ['state-leads'],
  'winding-leads-missing': ['read-leads-together'],
  'winding-leads-contradict': ['read-leads-together'],
  'winding-leads-exceed': ['read-leads-together'],
  'winding-needs-four-leads': ['use-four-leads'],
  'winding-too-coarse': ['use-milliohm-meter'],
  'winding-between-limits': ['ask-for-surge-test'],
  'winding-not-corrected': ['note-temperatures'],
  'winding-reference-no-temperature': ['note-temperatures'],
  'winding-reference-differs': ['compare-at-motor'],
  'winding-reference-too-close': ['compare-at-motor'],
  'winding-failed': ['measure-at-motor'],
};

function conclude(findings: WindingFinding[], cause: WindingCause, joint: JointState): WindingAssessment {
  const verdict = verdictOf(findings);
  const summary: WindingFinding[] = [];
  if (verdict === 'go') summary.push(finding('winding-passed', 'note'));
  if (verdict === 'no-go') summary.push(finding('winding-failed', 'note'));
  const all = [...findings, ...summary];
  const codes = all.flatMap(({ code }) => stepAfter[code] ?? []);
  const next = [...new Set(codes)].map((code): Step<WindingStepCode> => step(code));
  return { verdict, findings: all, next, cause, joint };
}
