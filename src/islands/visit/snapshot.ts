import sources from '../../../content/sources/sources.json' with { type: 'json' };
import { type LimitId, limit } from '../../calc/index.ts';
import { formatLimit } from '../../components/format-limit.ts';
import type { StepId } from '../../guide/answers.ts';
import type { LimitSnapshot, Snapshot } from '../../record/snapshot-schema.ts';
import type { Form } from '../../record/step-answers.ts';
import { isMeasurement } from '../../record/step-forms.ts';
import { stepAnswer } from './record-answers.ts';
import { stepCalculators } from './step-calculators.ts';

/** What is said of a measured step's readings today; undefined where they give no verdict. */
export function snapshotOf(id: StepId, form: Form): Snapshot | undefined {
  if (!isMeasurement(id)) return undefined;
  const occasion = id === 'insulation' ? { occasion: 'after-trip' } : {};
  const outcome = stepCalculators[id].judge({ ...form, ...occasion });
  if (outcome.state !== 'judged') return undefined;
  const parts = id === 'isolation' ? stepAnswer(id, form)?.assessment.parts : undefined;
  return {
    verdict: outcome.verdict,
    sentences: outcome.findings.map(({ text }) => text),
    limits: outcome.limits.map(limitSnapshot),
    ...(parts && { parts: { ...parts } }),
  };
}

function limitSnapshot(id: LimitId): LimitSnapshot {
  const data = limit(id);
  const source = data.source === null ? '' : sources[data.source as keyof typeof sources].short;
  return {
    id,
    label: data.label,
    value: formatLimit(data),
    status: data.status,
    source: [source, data.clause].filter(Boolean).join(', '),
  };
}
