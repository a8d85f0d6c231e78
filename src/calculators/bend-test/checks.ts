import type { CheckRow, CheckState } from '../../ui/plot/check-rows.ts';
import { loopNames } from './fields.ts';
import type { BendAssessment, LoopId, SweepState } from './rule/input.ts';

const states: Partial<Record<SweepState, CheckState>> = {
  steady: 'passes',
  jumps: 'fails',
  'open-at-rest': 'fails',
  missing: 'not-measured',
};

/** Each loop as it was in the first movement, then the positions. Pairs that nobody watched are left out. */
export function bendRows({ loops, findings }: BendAssessment): CheckRow[] {
  const always: readonly LoopId[] = ['UV', 'VW', 'WU', 'PE'];
  const shown = (Object.keys(loopNames) as LoopId[]).filter((id) => always.includes(id) || loops[id] !== 'missing');
  return [
    ...shown.map((id) => ({ id, name: loopNames[id], state: states[loops[id]] ?? ('undecided' as const) })),
    { id: 'positions', name: 'Insulation at rest', state: positionState(findings) },
  ];
}

function positionState(findings: BendAssessment['findings']): CheckState {
  const own = findings.filter(({ code }) => /^bend-(leak|position|insulation)/.test(code));
  if (own.some(({ severity }) => severity === 'fail')) return 'fails';
  if (own.some(({ severity }) => severity === 'pass')) return 'passes';
  const none = own.some((one) => one.code === 'bend-positions-missing' && one.whole === 0);
  return own.length === 0 || (none && own.length === 1) ? 'not-measured' : 'undecided';
}
