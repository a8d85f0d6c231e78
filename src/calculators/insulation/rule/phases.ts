import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { factorAt, judgeWinding, severityOf } from '../../../kernel/assessment/winding-insulation.ts';
import { validityOf } from '../../../kernel/electrics/correction-validity.ts';
import { phases } from '../../../kernel/electrics/phases.ts';
import { limitsOfMethod } from '../../../kernel/electrics/temperature-correction.ts';
import { type Interval, intervalOf, times } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { judgeDewPoint } from './air.ts';
import type { InsulationFinding, InsulationInput, InsulationPayloads, PhaseJudged, Terminal } from './input.ts';
import { referenceOf, type Target, targetOf } from './target.ts';

const finding = findingMaker<InsulationPayloads>();

/** Judges U, V and W to PE against the limit of the occasion, with temperature and dew point. */
export function judgePhases(input: InsulationInput): InsulationFinding[] {
  const found: InsulationFinding[] = [...notTaken(input)];
  // What was read through a filter is the filter's.
  if (input.filter === 'fitted') return found;

  const dew = judgeDewPoint(input);
  found.push(...dew);
  // A wet winding is dried before it is judged; otherwise it would be condemned for the weather.
  if (dew.some(({ code }) => code === 'winding-at-dew-point')) return found;

  const factor = factorAt(input.windingTemperature, input.correction, referenceOf(input.occasion));
  if (input.windingTemperature.kind !== 'value') {
    found.push(finding('temperature-missing', 'undecided', { readings: ['windingTemperature'] }));
  }
  if (factor === undefined) {
    const { from, to } = validityOf(input.correction);
    const limits = limitsOfMethod[input.correction];
    const parts = { limits, method: input.correction, fromCelsius: from, toCelsius: to };
    return [...found, finding('temperature-out-of-validity', 'undecided', parts)];
  }
  const target = targetOf(input);
  // Without the rated voltage the minimum of an old winding is unknown; another finding says so.
  if (target === undefined) return found;
  for (const terminal of [...phases, 'together'] as const) {
    const reading = readingAt(input, terminal);
    if (reading.kind !== 'missing') found.push(judgeTerminal(input, terminal, reading, target, factor));
  }
  return found;
}

/** What was read at one terminal, or with all three joined. */
function readingAt({ readings, together = missing }: InsulationInput, terminal: Terminal): Reading {
  return terminal === 'together' ? together : readings[terminal];
}

/** One reading of all three joined stands for the three, unless single ones were begun: then none of these may lack. */
function notTaken(input: InsulationInput): InsulationFinding[] {
  const absent = phases.filter((phase) => input.readings[phase].kind === 'missing');
  if (absent.length === 0) return [];
  const noneBegun = absent.length === phases.length;
  if (noneBegun && readingAt(input, 'together').kind !== 'missing') return [];
  if (noneBegun && input.rowKind === 'joined') {
    return [finding('together-missing', 'undecided', { readings: ['together'] })];
  }
  return [finding('phase-missing', 'undecided', { readings: absent })];
}

function judgeTerminal(
  input: InsulationInput,
  terminal: Terminal,
  reading: Reading,
  target: Target,
  factor: Interval,
): InsulationFinding {
  const { judgement, dissenting } = judgeWinding(reading, {
    occasion: input.occasion,
    limit: target.ohms,
    reference: target.reference,
    temperature: input.windingTemperature,
    correction: input.correction,
    instrument: input.instrument,
  });
  const limits = [...target.limits, ...[input.correction, ...dissenting].flatMap((method) => limitsOfMethod[method])];
  const parts = {
    readings: [terminal],
    limits,
    phase: terminal,
    occasion: input.occasion,
    limitOhms: target.ohms,
    referenceCelsius: target.reference,
    ...shownOf(reading, factor),
  };
  if (judgement === 'methods-differ') {
    return finding('phase-methods-differ', severityOf(judgement), { ...parts, methods: dissenting });
  }
  return finding(`phase-${judgement}`, severityOf(judgement), parts);
}

/** Raw value (or bound), factor and corrected value, each if it is a single finite number. */
function shownOf(reading: Reading, factor: Interval): Pick<PhaseJudged, 'kind' | 'ohms' | 'corrected'> {
  const { kind } = reading;
  const raw = reading.kind === 'over' ? reading.atLeast : intervalOf(reading).hi;
  // A bound that was not noted leaves no figure.
  if (raw === undefined || !Number.isFinite(raw)) return { kind };
  if (factor.lo !== factor.hi) return { kind, ohms: raw };
  const corrected = times({ lo: raw, hi: raw }, factor).lo;
  return { kind, ohms: raw, corrected: { ohms: corrected, factor: factor.lo } };
}
