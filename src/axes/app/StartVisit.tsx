import { useMemo, useState } from 'preact/hooks';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { href } from '../../ui/href.ts';
import { oneAtATime } from '../../ui/one-at-a-time.ts';
import { visitHash } from '../../visit/app/route.ts';
import { newVisit, type VisitDetails } from '../../visit/record/change-visit.ts';
import { newId } from '../../visit/storage/new-id.ts';
import { visitStore } from '../../visit/storage/visit-store.ts';
import type { Axis } from '../history/register.ts';
import type { AxisNotes } from '../record/change-axis.ts';
import { baselineOffer } from '../words/baseline.ts';

/** A visit to this axis with what is known about it. Nothing that was measured goes with it. */
export function detailsFor({ id, names, visits }: Axis, known: AxisNotes): Partial<VisitDetails> {
  const { plant, drive, motor, cableMetres: metres, cableSection: section, cableMaterial: material } = known;
  const cable = [metres, section, material].some((text) => text !== '');
  const [last] = visits;
  return {
    ...{ axisId: id, machine: names.machine, axis: names.axis, drive, motor, site: plant || (last?.site ?? '') },
    ...(cable && { cable: { metres, section, material } }),
  };
}

interface Props {
  axis: Axis;
  known: AxisNotes;
}

export function StartVisit({ axis, known }: Props) {
  const store = useMemo(() => visitStore(), []);
  const [problem, setProblem] = useState('');
  const tap = useMemo(oneAtATime, []);
  const start = async (more: Partial<VisitDetails>) => {
    const visit = newVisit(newId(), isoTime(new Date()), { ...detailsFor(axis, known), ...more });
    const saved = await store.save(visit);
    if (!saved.ok) return setProblem(saved.problem.message);
    location.href = href(`/visit/${visitHash(visit.id)}`);
  };
  return (
    <>
      <p class="banner-actions">
        <button type="button" class="primary" onClick={() => tap(() => start({}))}>
          New visit here
        </button>
        <button type="button" class="plain" onClick={() => tap(() => start({ purpose: 'baseline' }))}>
          Baseline visit
        </button>
      </p>
      <p class="hint">{baselineOffer()}</p>
      {problem !== '' && <p role="alert">{problem}</p>}
    </>
  );
}
