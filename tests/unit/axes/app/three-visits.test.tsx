import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { detailsFor } from '../../../../src/axes/app/StartVisit.tsx';
import { backgroundOf, earlierIds } from '../../../../src/axes/app/visit-background.ts';
import { knownOf, sistersOf } from '../../../../src/axes/history/known.ts';
import { pointsOf } from '../../../../src/axes/history/points.ts';
import { type Axis, axisOfVisit, registerOf } from '../../../../src/axes/history/register.ts';
import { seriesOf } from '../../../../src/axes/history/series.ts';
import { trendOf } from '../../../../src/axes/history/trend.ts';
import { headOf, readingsOf } from '../../../../src/axes/record/visit-digest.ts';
import { VerdictPanel } from '../../../../src/ui/verdict/VerdictPanel.tsx';
import type { Background } from '../../../../src/visit/app/background.ts';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { newVisit, type VisitDetails } from '../../../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import { enterStep } from '../../../support/visit-records.ts';
import { soundForms } from '../../visit/guide/support/sound-forms.ts';

// Three visits to one axis of the invented Marrow Bay Glassworks: 900, 400, 150 MΩ, all above the after-trip limit.

const carriage = { machine: 'Gantry 2', axis: 'Carriage', motor: 'SM-40, no. 17' };

function visited(id: string, day: string, reading: string, details: Partial<VisitDetails> = carriage): VisitRecord {
  const visit = newVisit(id, `${day}T08:00:00+01:00`, details);
  return enterStep(visit, 'insulation', { ...soundForms.insulation, together: reading }, `${day}T08:30:00+01:00`);
}

const first = visited('visit-first', '2024-03-02', '900 MΩ');
const second = visited('visit-second', '2025-03-02', '400 MΩ');
const third = visited('visit-third', '2026-03-02', '150 MΩ');
const sister = visited('visit-sister', '2025-06-01', '1.2 GΩ', { ...carriage, axis: 'Bridge', motor: 'SM-40, no. 18' });

const clock = Date.parse('2026-03-02T08:31:00+01:00');

function backgroundFor(visit: VisitRecord, all: VisitRecord[]): Background {
  const register = registerOf([], all.map(headOf));
  const axis = axisOfVisit(register, visit) as Axis;
  return backgroundOf(axis, sistersOf(register.axes, axis), visit, all.map(readingsOf), clock);
}

const evaluated = evaluate(third, '2026-03-02T08:31:00+01:00');
const background = backgroundFor(third, [first, second, third, sister]);

describe('the third visit', () => {
  test('passes, and its verdict does not stand alone', () => {
    const { outcome } = evaluated.steps.insulation;
    if (outcome === undefined) throw new Error('no outcome');
    const earlier = background.against(evaluated);
    expect(evaluated.steps.insulation.snapshot?.verdict).toBe('go');
    const html = renderToString(
      h(VerdictPanel, { name: 'insulation', label: 'Insulation', outcome, pending: false, earlier }),
    );
    expect(html).toContain('but the insulation has fallen');
    expect(html).toContain('Fallen since the last visit');
    expect(html).toContain('Fallen since its best reading');
    expect(html).toContain('400 MΩ on 2025-03-02, 150 MΩ now');
    expect(html).toContain('data-verdict="go"');
  });

  test('shows the last reading and the sister’s beside the field, and fills in nothing', () => {
    expect(background.beside('insulation').together).toBe(
      'Last visit, 2025-03-02: 400 MΩ at 24 °C. Same motor, Gantry 2, Bridge, 2025-06-01: 1.2 GΩ at 24 °C.',
    );
    expect(background.beside('isolation').joinedTogether).toBe(background.beside('insulation').together);
    expect(background.beside('bridge')).toEqual({});
  });

  test('is a note for a screen reader too', () => {
    expect(background.against(evaluated).every(({ text }) => !/undefined|NaN/.test(text))).toBe(true);
  });
});

test('a first visit has nothing to be compared with', () => {
  const now = evaluate(first, '2024-03-02T08:31:00+01:00');
  expect(backgroundFor(first, [first]).against(now)).toEqual([]);
});

test('a motor that was exchanged in between has no past', () => {
  const register = registerOf([], [first, second, third].map(headOf));
  const axis = axisOfVisit(register, third) as Axis;
  const change = {
    id: 'change-1',
    part: 'motor',
    on: '2025-12-01',
    note: '',
    dropped: false,
    count: 1,
    at: '2025-12-01T08:00:00+01:00',
  };
  const record = {
    format: 'overcurrent-fieldbook-axis',
    version: 1,
    id: axis.id,
    revision: 1,
    createdAt: change.at,
    names: [],
    fields: {},
    changes: [change],
  } as const;
  const noted = { ...axis, record: { ...record, names: [], changes: [change] } };
  expect(backgroundOf(noted, [], third, [first, second].map(readingsOf), clock).against(evaluated)).toEqual([]);
});

test('a new visit takes over what the axis is made of, and no reading', () => {
  const cable = { metres: '12 m', section: '2.5', material: 'pvc' };
  const { axes } = registerOf([], [headOf({ ...third, drive: 'D-9', cable })]);
  const axis = axes[0] as Axis;
  const details = detailsFor(axis, knownOf(axis));
  expect(details).toMatchObject({ axisId: axis.id, ...carriage, drive: 'D-9', cable });
  expect(newVisit('visit-fourth', '2026-04-01T08:00:00+01:00', details).steps).toEqual({});
});

test('the trend is the calculator’s, the series hold every reading as it was typed', () => {
  const earlier = [first, second, third].map((visit) => ({ visit: headOf(visit), sets: readingsOf(visit).sets }));
  const points = earlier.flatMap(({ visit, sets }) => pointsOf(visit, sets));
  const trend = trendOf(points, Date.parse('2026-03-03') / 86_400_000);
  expect(trend.rows.map(({ corrected }) => Number(corrected.toPrecision(3)))).toEqual([2.97e8, 1.32e8, 4.95e7]);
  expect(trend.findings.map(({ code }) => code)).toContain('trend-too-few');
  const [series] = seriesOf(earlier);
  expect(series?.rows.map(({ texts }) => texts.together)).toEqual(['900 MΩ', '400 MΩ', '150 MΩ']);
  expect(series?.rows.every(({ limits }) => limits.some(({ value }) => /^100\sMΩ$/.test(value)))).toBe(true);
});

test('a visit of a tablet whose clock is hours ahead is the last one before, not one of the future', () => {
  const ahead = newVisit('visit-ahead', '2026-03-02T13:00:00+01:00', carriage);
  const before = enterStep(
    ahead,
    'insulation',
    { ...soundForms.insulation, together: '400 MΩ' },
    '2026-03-02T13:10:00+01:00',
  );
  const all = [first, before, third];
  const axis = axisOfVisit(registerOf([], all.map(headOf)), third) as Axis;
  expect(earlierIds(axis, third, clock).sort()).toEqual([before.id, first.id].sort());
  const texts = backgroundFor(third, all)
    .against(evaluated)
    .map(({ text }) => text);
  expect(texts.join(' ')).toContain('Fallen since the last visit by a factor of at least 2.7');
  // Seen a day later it is a later visit, and no past of this one.
  expect(earlierIds(axis, third, Date.parse('2026-03-03T08:00:00+01:00'))).toEqual([first.id]);
});
