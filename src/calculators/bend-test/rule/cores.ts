import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { coreResistance } from '../../../kernel/electrics/core-resistance.ts';
import { type Phase, phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { intervalShown } from '../../../kernel/reading/interval.ts';
import { within } from '../../../kernel/reading/spread.ts';
import {
  type BendFinding,
  type BendInput,
  type BendPayloads,
  type BentCore,
  type LoopId,
  loopIds,
  powerLoops,
  type SweepState,
} from './input.ts';

const finding = findingMaker<BendPayloads>();

type Power = (typeof powerLoops)[number];

/** The loop that leaves this core out; the other two share it. */
const without: Record<Phase, Power> = { U: 'VW', V: 'WU', W: 'UV' };
const withCore = (phase: Phase): Power[] => powerLoops.filter((id) => id !== without[phase]);

/**
 * The cores that the loops of one movement name. A power core: both loops with it jump, and the third stays steady. PE or
 * the screen: its loop jumps, and both loops of U, through which it goes back, stay steady. Of a pair, one of the two.
 */
export function coresThatJump(states: Record<LoopId, SweepState>): BentCore[] {
  const jumps = (id: LoopId) => states[id] === 'jumps';
  const power = phases.filter((phase) => withCore(phase).every(jumps) && states[without[phase]] === 'steady');
  const quietU = withCore('U').every((id) => states[id] === 'steady');
  const alone = (['PE', 'screen'] as const).filter((id) => quietU && jumps(id));
  return [...power, ...alone, ...(['brake', 'sensor', 'feedback'] as const).filter(jumps)];
}

const isPower = (id: LoopId): id is Power => powerLoops.some((one) => one === id);

/** Loops at rest that are no loops of two sound cores: then a quiet movement says little. */
export function judgeRest(input: BendInput, states: Record<LoopId, SweepState>): BendFinding[] {
  const { metres, squareMillimetres } = input;
  const known = metres.kind === 'value' && squareMillimetres !== undefined;
  const one = known ? coreResistance(metres.value, squareMillimetres) : undefined;
  const measured = loopIds.filter((id) => states[id] !== 'missing' && states[id] !== 'open-at-rest');
  const explained = (id: LoopId) =>
    isPower(id) && one !== undefined
      ? 2 * one * (1 + limitValue('pe-core-tolerance') / 100) + limitValue('bend-noise')
      : limitValue('bend-rest-most');
  const high = measured.filter((id) => {
    const { rest, after } = input.loops[id];
    return [rest, after].some((each) => each.kind !== 'missing' && intervalShown(each).hi > explained(id));
  });
  const low = measured.filter((id) => isPower(id) && one !== undefined && intervalShown(input.loops[id].rest).hi < one);
  const limits: LimitId[] =
    one === undefined
      ? ['bend-rest-most']
      : ['pe-core-resistance', 'pe-core-tolerance', 'bend-noise', 'bend-rest-most'];
  const found: BendFinding[] = [];
  if (high.length > 0)
    found.push(finding('bend-rest-odd', 'undecided', { readings: rests(high), limits, loops: high, low: false }));
  if (low.length > 0)
    found.push(
      finding('bend-rest-odd', 'undecided', {
        ...{ readings: rests(low), loops: low, low: true },
        limits: ['pe-core-resistance'],
      }),
    );
  return [...found, ...solve(input, one)];
}

const rests = (loops: readonly LoopId[]) => loops.map((id) => `${id}Rest`);

/** Three loops give each core: half of the two loops with it less the one without it. */
function solve({ loops }: BendInput, one: number | undefined): BendFinding[] {
  const at = (id: Power) => loops[id].rest;
  if (powerLoops.some((id) => at(id).kind !== 'value')) return [];
  const shown = (id: Power) => intervalShown(at(id));
  const middle = (id: Power) => shown(id).lo / 2 + shown(id).hi / 2;
  const ohms = Object.fromEntries(
    phases.map((phase) => {
      const [a, b] = withCore(phase) as [Power, Power];
      return [phase, Math.max(0, middle(a) / 2 + middle(b) / 2 - middle(without[phase]) / 2)];
    }),
  ) as Record<Phase, number>;
  const readings = rests(powerLoops);
  const noise = limitValue('bend-noise');
  const highest = Math.max(...powerLoops.map((id) => shown(id).lo));
  const lowest = Math.min(...powerLoops.map((id) => shown(id).hi));
  const table = one === undefined ? {} : { table: one };
  const note = finding('bend-core-ohms', 'note', {
    ...{ readings, ohms, ...table },
    limits: one === undefined ? [] : ['pe-core-resistance'],
  });
  if (within(highest - lowest, noise)) return [note];
  const above = (a: Power, b: Power) => shown(a).lo - shown(b).hi > noise;
  const core = phases.find((phase) => withCore(phase).every((id) => above(id, without[phase])));
  return [
    note,
    finding('bend-cores-uneven', 'undecided', {
      readings,
      limits: ['bend-noise'],
      ...(core !== undefined && { core }),
    }),
  ];
}
