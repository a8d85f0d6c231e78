import type { Severity } from '../../kernel/assessment/assessment.ts';
import { judgeDischarge } from '../../kernel/assessment/bus-discharge.ts';
import { severityWords } from '../../kernel/form/verdict-words.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatReading, formatRounded } from '../../kernel/reading/format-reading.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { isBusProof } from '../guide/dead-proofs.ts';
import { type Form, ticked, voltage } from '../steps/fields.ts';
import type { PointGroup } from '../steps/lockout/points.ts';
import { questions } from '../steps/questions.ts';

/** What was read at one point of a proof that the drive is dead. */
export interface DeadPoint {
  id: string;
  point: string;
  /** `0.1 V`; as typed if it can't be read. */
  reading: string;
  limit: string;
  verdict: string;
  /** `06:12`; empty if it was not noted. */
  time: string;
}

/** One proof, point by point. */
export interface DeadProof {
  id: string;
  title: string;
  /** `3 March 2026, 06:12`. */
  when: string;
  points: DeadPoint[];
  /** Groups whose other points were measured too, and read no higher than those that have a row. */
  rest: string[];
}

/** Every proof of the visit, the replaced ones too, in the order in which they were given. */
export function deadProofs({ visit, guide }: EvaluatedVisit): DeadProof[] {
  const proofs = guide.path
    .map(({ id }) => id)
    .filter(isBusProof)
    .flatMap((id) => {
      const step = visit.steps[id];
      if (step === undefined) return [];
      const groups = (questions[id].groups ?? []) as readonly PointGroup[];
      // Of a replaced proof the times of the single points are not kept.
      const earlier = (step.provedBefore ?? []).map(({ at, form }) => ({ at, form, readAt: {} }));
      return [...earlier, step].map(({ at, form, readAt }) => ({
        at,
        proof: {
          id: `${id} ${at}`,
          title: questions[id].title,
          when: shownTime(at),
          ...pointsOf(groups, form, readAt),
        },
      }));
    });
  return proofs.sort((a, b) => Date.parse(a.at) - Date.parse(b.at)).map(({ proof }) => proof);
}

function pointsOf(groups: readonly PointGroup[], form: Form, readAt: Form): Pick<DeadProof, 'points' | 'rest'> {
  const fields = groups.flatMap(({ points, older }) => [...points, older]);
  const points = fields.flatMap(({ id, name }): DeadPoint[] => {
    const text = (form[id] ?? '').trim();
    if (text === '') return [];
    const reading = voltage(form, id);
    const judged = reading !== undefined && reading.kind !== 'missing' ? judgeDischarge(reading) : undefined;
    return [
      {
        ...{ id, point: name, reading: judged && reading ? formatReading(reading) : text },
        limit: formatRounded(limitValue('touch-voltage'), 'V'),
        verdict: judged === undefined ? severityWords.undecided : severityWords[dead(judged.severity)],
        time: (readAt[id] ?? '').slice(11, 16),
      },
    ];
  });
  const rest = groups.filter((group) => ticked(form, group.rest.id)).map(({ legend }) => legend);
  return { points, rest };
}

/** What may falsify a resistance is dead all the same: the proof asks for less than the touch voltage. */
const dead = (severity: Severity): Severity => (severity === 'stop' ? 'stop' : 'pass');
