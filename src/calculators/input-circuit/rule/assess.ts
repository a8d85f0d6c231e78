import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import { isBelowZero } from '../../../kernel/assessment/diode-pair.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import type { InputAssessment, InputCircuitInput, InputFinding, InputPayloads, InputStepCode } from './input.ts';
import { judgeFuses, judgeLink, judgePrecharge } from './parts.ts';
import { judgeRectifier, linesOf } from './rectifier.ts';

const finding = findingMaker<InputPayloads>();

const rows = ['plusConducting', 'plusBlocking', 'minusConducting', 'minusBlocking'] as const;
const link = ['linkConducting', 'linkBlocking'] as const;

/**
 * Input and DC bus of a drive, dead: fuses (Ω), each diode of the rectifier and the bus both ways (V, diode test), the
 * precharge resistor (Ω). Nothing is judged beside a bus that may be charged, nor with the supply leads on: a filter and
 * the other devices of the supply then read as well. A fail names what is suspect. An impossible figure (not finite, or
 * negative where it can't be) gives `figure-impossible`: undecided, nothing is judged.
 */
export function assessInputCircuit(input: InputCircuitInput): InputAssessment {
  const impossible = impossibleFigures(input, ['busVoltage', ...rows, ...link]);
  if (impossible.length > 0) return conclude(input, impossible);
  const discharge = judgeDischarge(input.busVoltage);
  if (discharge.severity === 'stop') return conclude(input, [discharge]);
  const below = [
    ...link.filter((field) => isBelowZero(input[field])),
    ...rows.flatMap((row) =>
      linesOf(input).flatMap((line) => (isBelowZero(input[row][line]) ? [`${row}${line}`] : [])),
    ),
  ];
  if (below.length > 0) return conclude(input, [finding('input-negative', 'stop', { readings: below })]);
  if (discharge.severity !== 'pass') return conclude(input, [discharge]);
  if (input.supplyLeads === 'connected')
    return conclude(input, [finding('supply-leads-connected', 'undecided', { readings: ['supplyLeads'] })]);
  const stated: InputFinding[] = [];
  if (input.supplyLeads !== 'off')
    stated.push(finding('supply-leads-not-stated', 'undecided', { readings: ['supplyLeads'] }));
  if (input.others !== 'off') {
    const code = input.others === 'connected' ? 'others-connected' : 'others-not-stated';
    stated.push(finding(code, 'undecided', { readings: ['others'] }));
  }
  return conclude(input, [
    discharge,
    ...stated,
    ...judgeFuses(input),
    ...judgeRectifier(input),
    ...judgeLink(input),
    judgePrecharge(input),
  ]);
}

/** Findings after which a second reading, with everything else off, proves the drive bad. */
function convicts(one: InputFinding): boolean {
  if (one.code === 'rectifier-short' || one.code === 'link-short') return one.bothWays;
  return one.code === 'precharge-bypassed' || one.code === 'precharge-open';
}

function conclude(input: InputCircuitInput, findings: InputFinding[]): InputAssessment {
  const codes = findings.flatMap(({ code }) => stepAfter[code] ?? []);
  const inside = findings.filter(({ severity, code }) => severity === 'fail' && code !== 'fuse-open');
  if (inside.length > 0) {
    const alone = input.supplyLeads === 'off' && input.others === 'off';
    if (!input.again) codes.push('read-twice');
    else if (!alone) codes.push('take-rest-off');
    else codes.push(inside.some(convicts) ? 'replace-drive' : 'compare-input');
  }
  const sound = ['rectifier-sound', 'link-sound'].every((code) => findings.some((one) => one.code === code));
  if (sound && findings.some(({ code }) => code === 'fuse-open')) codes.push('look-before-drive');
  if (findings.some(({ code }) => /^(rectifier|link)-/.test(code) && !code.endsWith('-missing')))
    codes.push('measure-bus-again');
  const next: Step<InputStepCode>[] = [...new Set(codes)].map((code) => step(code));
  return { verdict: verdictOf(findings), findings, next };
}

const stepAfter: Partial<Record<InputFinding['code'], InputStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'bus-not-measured': ['measure-bus'],
  'bus-not-discharged': ['wait-and-measure-bus'],
  'bus-residual-voltage': ['wait-and-measure-bus'],
  'input-negative': ['wait-and-measure-bus'],
  'supply-leads-connected': ['take-supply-leads-off'],
  'supply-leads-not-stated': ['take-supply-leads-off'],
  'others-connected': ['take-others-off'],
  'others-not-stated': ['take-others-off'],
  'fuse-open': ['fuses-last'],
  'fuse-unclear': ['measure-fuses'],
  'fuses-missing': ['measure-fuses'],
  'rectifier-missing': ['measure-rectifier'],
  'lines-not-judged': ['measure-lines'],
  'rectifier-side-open': ['compare-input'],
  'rectifier-uneven': ['measure-rectifier', 'compare-input'],
  'rectifier-exchanged': ['measure-rectifier'],
  'rectifier-unclear': ['measure-rectifier'],
  'link-missing': ['measure-link'],
  'link-open': ['compare-input'],
  'link-one-drop': ['read-stages', 'compare-input'],
  'link-exchanged': ['measure-link'],
  'link-unclear': ['measure-link'],
  'link-no-climb': ['compare-input'],
  'link-climb-not-stated': ['measure-link'],
  'precharge-none': ['ask-about-precharge'],
  'precharge-inside': ['ask-about-precharge'],
  'precharge-missing': ['ask-about-precharge'],
  'precharge-over-range': ['note-precharge-range'],
  'precharge-too-close': ['ask-about-precharge'],
};
