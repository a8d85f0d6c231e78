import type { Decision } from '../guide/decision.ts';
import { chosen, type Form } from '../steps/fields.ts';
import { answerOf, type RowId, restartRows, runs, wantedRows } from './rows.ts';

/**
 * How the return to service stands. `trips-again`: the cause was not found, or is not the only one. `fault`: something is not
 * in order. `too-early`: the axis was enabled or ran before something that comes first. `open`: something is not answered.
 * `closed`: everything is in order and the machine runs.
 */
export interface RestartState {
  kind: 'trips-again' | 'fault' | 'too-early' | 'open' | 'closed';
  /** The rows that the kind is about, in the order of the work; empty for `closed`. */
  rows: RowId[];
  /** Whether the machine was said to run. */
  ran: boolean;
}

/** Decisions after which the machine goes back to work. After the others something must be decided or mended first. */
export function leadsBackToService({ kind }: Pick<Decision, 'kind'>): boolean {
  return kind === 'replace' || kind === 'no-fault-found' || kind === 'mechanical';
}

export function restartState(form: Form, decision: Pick<Decision, 'replace'>): RestartState {
  const wanted = wantedRows(decision);
  const faults = wanted.filter((id) => answerOf(form, id) === 'fault');
  const open = wanted.filter((id) => answerOf(form, id) === undefined);
  const result = chosen(form, runs);
  const ran = result === 'yes' || result === 'trips';
  const enabled = ran || wanted.some((id) => restartRows[id].when === 'enabled' && wasDone(form, id));
  const skipped = open.filter((id) => isDueBefore(id, { enabled, ran }));
  if (result === 'trips') return { kind: 'trips-again', rows: [...faults, ...skipped], ran };
  if (faults.length > 0) return { kind: 'fault', rows: faults, ran };
  if (skipped.length > 0) return { kind: 'too-early', rows: skipped, ran };
  return open.length > 0 || !ran ? { kind: 'open', rows: open, ran } : { kind: 'closed', rows: [], ran };
}

function wasDone(form: Form, id: RowId): boolean {
  const answer = answerOf(form, id);
  return answer === 'ok' || answer === 'fault';
}

function isDueBefore(id: RowId, { enabled, ran }: { enabled: boolean; ran: boolean }): boolean {
  const { when } = restartRows[id];
  return (when === 'before-enable' && enabled) || (when === 'released' && ran);
}
