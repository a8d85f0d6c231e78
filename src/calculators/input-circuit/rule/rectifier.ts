import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { judgePair, type PairJudgement, pairLimits } from '../../../kernel/assessment/diode-pair.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { Diode, InputCircuitInput, InputFinding, InputPayloads, Line, Side } from './input.ts';

const finding = findingMaker<InputPayloads>();

export const linesOf = ({ lines }: InputCircuitInput): Line[] => (lines === 'two' ? ['L1', 'L2'] : ['L1', 'L2', 'L3']);

const sides: readonly Side[] = ['plus', 'minus'];

interface Judged extends Diode {
  judgement: PairJudgement;
}

/** Drops in V of the diodes of one side. A short is none, and neither is a reading that blocks. */
export function dropsOf(input: InputCircuitInput, side: Side): { line: Line; volts: number }[] {
  return linesOf(input).flatMap((line) => {
    const one = input[`${side}Conducting`][line];
    const conducts =
      one.kind === 'value' && one.value > limitValue('diode-short') && one.value < limitValue('diode-blocking');
    return conducts ? [{ line, volts: one.value }] : [];
  });
}

/** A bad joint in series with one diode conducts all the same, with more than its fellows. */
function unevenDrops(input: InputCircuitInput, side: Side): InputFinding | undefined {
  const drops = dropsOf(input, side);
  const volts = drops.map((one) => one.volts);
  const apartVolts = Math.max(...volts) - Math.min(...volts);
  if (!(apartVolts > limitValue('diode-balance'))) return undefined;
  const readings = drops.map(({ line }) => `${side}Conducting${line}`);
  return finding('rectifier-uneven', 'undecided', { readings, limits: ['diode-balance'], side, apartVolts });
}

/**
 * Every diode by itself, and an open one beside its fellows: a whole side that conducts neither way may be a controlled
 * rectifier or a precharge in between, so it decides nothing.
 */
export function judgeRectifier(input: InputCircuitInput): InputFinding[] {
  const all = sides.flatMap((side) =>
    linesOf(input).map((line): Judged => {
      const pair = { conducting: input[`${side}Conducting`][line], blocking: input[`${side}Blocking`][line] };
      return { side, line, judgement: judgePair(pair, input.instrument) };
    }),
  );
  const limits = [...pairLimits];
  const of = (...judgements: PairJudgement[]) => all.filter(({ judgement }) => judgements.includes(judgement));
  const parts = (some: readonly Judged[]) => ({
    readings: some.flatMap(({ side, line }) => [`${side}Conducting${line}`, `${side}Blocking${line}`]),
    limits,
    diodes: some.map(({ side, line }): Diode => ({ side, line })),
  });
  const found: InputFinding[] = [];
  const [both, one, leaky] = [of('short-both-ways'), of('short-one-way'), of('leaky')];
  if (both.length > 0) found.push(finding('rectifier-short', 'fail', { ...parts(both), bothWays: true }));
  if (one.length > 0) found.push(finding('rectifier-short', 'fail', { ...parts(one), bothWays: false }));
  if (leaky.length > 0) found.push(finding('rectifier-leaky', 'fail', parts(leaky)));
  for (const side of sides) {
    const open = of('open').filter((diode) => diode.side === side);
    if (open.length === 0) continue;
    const conducts = all.some((diode) => diode.side === side && diode.judgement === 'sound');
    found.push(
      conducts
        ? finding('rectifier-open', 'fail', parts(open))
        : finding('rectifier-side-open', 'undecided', { readings: parts(open).readings, limits, side }),
    );
  }
  for (const side of sides) {
    const uneven = unevenDrops(input, side);
    if (uneven !== undefined) found.push(uneven);
  }
  const [exchanged, unclear] = [of('exchanged'), of('unclear')];
  if (exchanged.length > 0) found.push(finding('rectifier-exchanged', 'undecided', parts(exchanged)));
  if (unclear.length > 0) found.push(finding('rectifier-unclear', 'undecided', parts(unclear)));
  const { readings } = parts(of('missing'));
  if (readings.length > 0) found.push(finding('rectifier-missing', 'undecided', { readings }));
  if (found.length > 0) return found;
  return [
    finding('rectifier-sound', 'pass', { readings: parts(all).readings, limits }),
    finding('lines-not-judged', 'caution'),
  ];
}
