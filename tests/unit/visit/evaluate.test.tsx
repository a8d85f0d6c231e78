import { renderToString } from 'preact-render-to-string';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { calculator as bridgeForm } from '../../../src/calculators/bridge/form.ts';
import { calculator as insulationForm } from '../../../src/calculators/insulation/form.ts';
import { calculator as isolationForm } from '../../../src/calculators/isolation/form.ts';
import { calculator as windingForm } from '../../../src/calculators/winding/form.ts';
import type { Outcome } from '../../../src/kernel/form/calculator-form.ts';
import { StepList } from '../../../src/visit/app/StepList.tsx';
import { VisitScreen } from '../../../src/visit/app/VisitScreen.tsx';
import { visitState } from '../../../src/visit/app/visit-summary.ts';
import { enterStep } from '../../../src/visit/change-step.ts';
import { type EvaluatedVisit, evaluate } from '../../../src/visit/evaluate.ts';
import { VisitReport } from '../../../src/visit/report/VisitReport.tsx';
import type { VisitStore } from '../../../src/visit/storage/visit-store.ts';
import { badInsulation, driveOnly, motorAndCable, visitOf, withBusAgain } from '../../support/marrow-bay-visits.ts';

const soundWinding = {
  UV: '1.82 Ω',
  VW: '1.83 Ω',
  WU: '1.82 Ω',
  leads: 'four',
};

/** Bridge, insulation, isolation and winding are measured. */
const visit = visitOf([...withBusAgain(motorAndCable), ['winding', soundWinding]]);
const { changedAt } = visit;
const later = '2026-03-03T06:58:00+01:00';
const nextDay = '2026-03-04T06:58:00+01:00';

interface Spy {
  mock: { results: readonly { type: string; value?: unknown }[] };
}

const forms = {
  bridge: bridgeForm,
  insulation: insulationForm,
  isolation: isolationForm,
  winding: windingForm,
};
/** A blank form is passed to its calculator, which assesses nothing. */
const assessed = ({ mock }: Spy) => mock.results.filter(({ value }) => (value as Outcome).state !== 'blank').length;
const counted = () => Object.fromEntries(Object.entries(spies).map(([name, spy]) => [name, assessed(spy)]));
let spies: Record<string, Spy>;

beforeEach(() => {
  spies = Object.fromEntries(Object.entries(forms).map(([name, form]) => [name, vi.spyOn(form, 'judge')]));
});
afterEach(() => {
  vi.restoreAllMocks();
});

const none = { bridge: 0, insulation: 0, isolation: 0, winding: 0 };

const noWaits = {
  running: [],
  now: 0,
  start: () => undefined,
  remove: () => undefined,
};

describe('each measured step is assessed once', () => {
  test('when a visit is opened', () => {
    evaluate(visit, changedAt);
    expect(counted()).toEqual({
      bridge: 1,
      insulation: 1,
      isolation: 1,
      winding: 1,
    });
  });

  test('after a changed answer only the changed step', () => {
    const before = evaluate(visit, changedAt);
    vi.clearAllMocks();
    const after = enterStep(before, 'insulation', { ...badInsulation, U: '1.4M' }, later);
    expect(counted()).toEqual({ ...none, insulation: 1 });
    expect(after.guide.due).toBe('isolation');
  });

  test('another spelling is assessed once too, and is not a new answer', () => {
    const before = evaluate(visit, changedAt);
    vi.clearAllMocks();
    const after = enterStep(before, 'insulation', { ...badInsulation, U: '1,1 MΩ' }, later);
    expect(counted()).toEqual({ ...none, insulation: 1 });
    expect(after.visit.seq).toBe(visit.seq);
  });

  test('an answer to a question assesses no step, and neither does the end of a stretch of work', () => {
    const before = evaluate(visit, changedAt);
    vi.clearAllMocks();
    const { remark: _none, ...seen } = visit.steps.inspect?.form ?? {};
    const after = enterStep(before, 'inspect', { ...seen, seenMotor: 'wet' }, later);
    const tomorrow = evaluate(after.visit, nextDay, after);
    expect(counted()).toEqual(none);
    expect(tomorrow.stretch).toBe(before.stretch + 1);
    expect(tomorrow.answers.inspect).toMatchObject({
      earlier: true,
      answer: { seen: { motor: 'wet' } },
    });
  });

  test('reusing the previous evaluation gives the same as evaluating afresh', () => {
    const after = enterStep(evaluate(visit, changedAt), 'insulation', { ...badInsulation, U: '1.4M' }, later);
    expect(after).toEqual(evaluate(after.visit, later));
    expect(evaluate(after.visit, nextDay, after)).toEqual(evaluate(after.visit, nextDay));
  });
});

const nothing = () => undefined;
const store = {} as VisitStore;

function sessionOf(evaluated: EvaluatedVisit) {
  return {
    ...{
      evaluated,
      missing: undefined,
      savedAt: undefined,
      typing: false,
      trouble: undefined,
    },
    ...{
      changedElsewhere: undefined,
      loaded: 1,
      draft: nothing,
      change: nothing,
      retry: nothing,
      reload: nothing,
      current: nothing,
    },
  };
}

describe('list, screen and report show one evaluation', () => {
  const evaluated = evaluate(visitOf(driveOnly), changedAt);
  const { bridge } = evaluated.steps;
  /** No record gives this: a view that computed anything itself would not show it. */
  const marked: EvaluatedVisit = {
    ...evaluated,
    guide: {
      ...evaluated.guide,
      decision: {
        kind: 'mechanical',
        replace: [],
        suspect: [],
        excluded: [],
        possible: [],
        good: [],
        open: [],
        baseline: [],
      },
    },
    steps: {
      ...evaluated.steps,
      bridge: { ...bridge, line: 'A line from the evaluation' },
    },
    differs: [{ step: 'bridge', differs: ['verdict'], ...twice(bridge.snapshot) }],
  };
  const drawn: [string, () => string][] = [
    ['screen', () => renderToString(<VisitScreen evaluated={marked} session={sessionOf(marked)} store={store} />)],
    ['report', () => renderToString(<VisitReport evaluated={marked} />)],
  ];

  test.each(drawn)('in the %s, which assesses nothing', (_, draw) => {
    vi.clearAllMocks();
    const html = draw();
    expect(html).toContain('A line from the evaluation');
    expect(html).toContain('Mend the mechanics first.');
    expect(html).toContain('Kept and today’s verdict differ');
    expect(counted()).toEqual(none);
  });

  test('in the list of steps and in that of visits', () => {
    const steps = renderToString(<StepList evaluated={marked} session={sessionOf(marked)} waits={noWaits} />);
    expect(steps).toContain('A line from the evaluation');
    expect(visitState(marked)).toBe('Mend the mechanics first. No part is replaced on this evidence.');
  });
});

function twice(snapshot: EvaluatedVisit['steps']['bridge']['snapshot']) {
  if (snapshot === undefined) throw new Error('the bridge of this visit has a verdict');
  return { stored: snapshot, today: snapshot };
}
