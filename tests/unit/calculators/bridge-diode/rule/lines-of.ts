import { suspectPositions } from '../../../../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessBridgeDiode, type BridgeDiodeInput } from '../../../../../src/calculators/bridge-diode/rule/assess.ts';
import { type DiodeRows, diodeInput } from '../../../../support/diode-cases.ts';
import { lineWithLimits } from '../../../../support/lines.ts';

/** What a sound stage has too is left out of the lines. */
const always = new Set(['bus-discharged', 'diode-blind-to-leaks']);
const passes = new Set(['diode-balanced', 'diode-blocks']);

/** Findings as lines without those of a sound stage, suspects, and next steps without the standing advice. */
export function linesOf(rows: DiodeRows, other: Partial<BridgeDiodeInput> = {}) {
  const { findings, verdict, drive, next } = assessBridgeDiode(
    diodeInput(rows, { resistanceOrder: 'first', ...other }),
  );
  return {
    verdict,
    drive,
    said: findings.filter(({ code }) => !always.has(code) && !passes.has(code)).map(lineWithLimits),
    passed: findings.filter(({ code }) => passes.has(code)).map(lineWithLimits),
    suspects: suspectPositions(findings),
    next: next.map(({ code }) => code),
  };
}
