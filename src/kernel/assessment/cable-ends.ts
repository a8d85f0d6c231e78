import { type FindingOf, findingMaker, type Nothing, type Severity } from './assessment.ts';

/**
 * Brake, sensor and all other cores of the motor cable that carry no phase, during the reading. `to-pe`: off at the
 * drive end, joined and connected to PE; `none`: the cable has none; `free`: they hang free.
 */
export type IdleCores = 'to-pe' | 'none' | 'free' | 'not-stated';

/** An output filter or a surge suppressor between the phases and PE, still on the end of the cable. */
export type EndFilter = 'none' | 'fitted' | 'not-stated';

export interface CableEndPayloads {
  'idle-cores-at-pe': Nothing;
  'idle-cores-none': Nothing;
  'idle-cores-free': Nothing;
  'idle-cores-not-stated': Nothing;
  'filter-fitted': Nothing;
}

export type CableEndFinding = FindingOf<CableEndPayloads>;
export type CableEndStepCode = 'join-idle-cores' | 'take-filter-off';

const finding = findingMaker<CableEndPayloads>();

const idleFinding: Record<IdleCores, [Exclude<CableEndFinding['code'], 'filter-fitted'>, Severity]> = {
  'to-pe': ['idle-cores-at-pe', 'pass'],
  none: ['idle-cores-none', 'pass'],
  free: ['idle-cores-free', 'undecided'],
  'not-stated': ['idle-cores-not-stated', 'undecided'],
};

/** A phase core that is shorted to an idle core which hangs free passes every test against PE. */
export function judgeIdleCores(idleCores: IdleCores = 'not-stated'): CableEndFinding {
  const [code, severity] = idleFinding[idleCores];
  return finding(code, severity, { readings: ['idleCores'] });
}

/** Whether a leak from a phase to an idle core would have shown. */
export function idleCoresTested(idleCores: IdleCores | undefined): boolean {
  return idleCores === 'to-pe' || idleCores === 'none';
}

/** A filter has resistors or varistors to PE, so that nothing read through it speaks of the insulation. */
export function judgeFilter(filter: EndFilter | undefined): CableEndFinding[] {
  return filter === 'fitted' ? [finding('filter-fitted', 'undecided', { readings: ['filter'] })] : [];
}
