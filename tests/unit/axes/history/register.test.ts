import { describe, expect, test } from 'vitest';
import { exchangesOf, sameSince, secondDrive } from '../../../../src/axes/history/changes.ts';
import { knownOf, searched, sistersOf } from '../../../../src/axes/history/known.ts';
import { type Axis, axisNamed, registerOf } from '../../../../src/axes/history/register.ts';
import type { AxisRecord } from '../../../../src/axes/record/axis-schema.ts';
import { newAxis, recordOf, renamed, textIn, withChange, withValues } from '../../../../src/axes/record/change-axis.ts';
import { mergeAxes } from '../../../../src/axes/record/merge-axes.ts';
import { idOfNames } from '../../../../src/axes/record/names.ts';
import type { VisitHead } from '../../../../src/axes/record/visit-digest.ts';

// The machines of the invented Marrow Bay Glassworks. Common practice, no source.

const lift = { machine: 'Gantry 2', axis: 'Lift' };
const at = (day: string) => `${day}T08:00:00+01:00`;

let made = 0;
const visit = (names: { machine: string; axis: string }, day: string, more: Partial<VisitHead> = {}): VisitHead => ({
  ...{ id: `visit-${++made}`, site: '', drive: '', motor: '', at: at(day), baseline: false },
  ...names,
  ...more,
});
const replaced = (...parts: string[]) => ({ decision: { kind: 'replace', headline: 'Replace', replace: parts } });
const first = (records: AxisRecord[], visits: VisitHead[]): Axis => {
  const [axis] = registerOf(records, visits).axes;
  if (axis === undefined) throw new Error('no axis');
  return axis;
};

describe('which axis a visit belongs to', () => {
  test('visits with the same names are one axis, without any record', () => {
    const { axes, unnamed } = registerOf(
      [],
      [
        visit(lift, '2026-01-02'),
        visit({ machine: 'gantry  2', axis: 'LIFT' }, '2026-03-02'),
        visit({ machine: '', axis: '' }, '2026-01-01'),
      ],
    );
    expect(axes.map(({ id, visits }) => [id, visits.map(({ at: time }) => time.slice(0, 10))])).toEqual([
      [idOfNames(lift), ['2026-03-02', '2026-01-02']],
    ]);
    expect(unnamed).toHaveLength(1);
  });

  test('a renamed axis keeps the visits of its former name, also those that come later from another device', () => {
    const record = renamed(newAxis(lift, at('2026-01-01')), { machine: 'Gantry 2', axis: 'Z1' }, at('2026-02-01'));
    const axis = first([record], [visit(lift, '2026-03-01'), visit({ machine: 'Gantry 2', axis: 'Z1' }, '2026-03-02')]);
    expect([axis.names.axis, axis.visits.length]).toEqual(['Z1', 2]);
  });

  test('a former name, or a merged one, names the axis; the present name of another goes first', () => {
    const z1 = { machine: 'Gantry 2', axis: 'Z1' };
    const former = renamed(newAxis(z1, at('2026-01-01')), { machine: 'Gantry 2', axis: 'Hoist' }, at('2026-02-01'));
    const record = renamed(former, lift, at('2026-02-02'));
    const named = (records: AxisRecord[], axis: string) =>
      axisNamed(registerOf(records, []), { machine: 'gantry 2', axis })?.id;
    expect(['lift', 'hoist', 'Z1', 'Bridge'].map((axis) => named([record], axis))).toEqual([
      ...[record.id, record.id, record.id, undefined],
    ]);
    const merged = withValues(
      newAxis({ machine: 'Gantry 2', axis: 'Z' }, at('2026-01-01')),
      { mergedInto: record.id },
      at('2026-02-03'),
    );
    expect(named([record, merged], 'z')).toBe(record.id);
    const other = newAxis({ machine: 'Gantry 2', axis: 'Hoist' }, at('2026-03-01'));
    expect(named([record, other], 'Hoist')).toBe(other.id);
  });

  test('the present name of one axis goes before a former name of another', () => {
    const former = renamed(newAxis(lift, at('2026-01-01')), { machine: 'Gantry 2', axis: 'Z1' }, at('2026-02-01'));
    const present = newAxis(lift, at('2026-02-02'), 'other-axis');
    const { axes } = registerOf([former, present], [visit(lift, '2026-03-01')]);
    expect(axes.find(({ visits }) => visits.length === 1)?.id).toBe('other-axis');
  });

  test('an id goes before the names', () => {
    const axis = first(
      [],
      [
        visit({ machine: 'Gantry', axis: '?' }, '2026-03-01', { axisId: 'axis-of-the-lift' }),
        visit({ machine: 'Gantry', axis: '?' }, '2026-03-02'),
      ],
    );
    expect([axis.id, axis.visits.length]).toEqual(['axis-of-the-lift', 2]);
  });

  test('two merged spellings are one axis, and apart again when it is undone', () => {
    const other = { machine: 'Gantry two', axis: 'Lift' };
    const visits = [visit(lift, '2026-01-01'), visit(other, '2026-02-01')];
    const merged = withValues(newAxis(other, at('2026-02-02')), { mergedInto: idOfNames(lift) }, at('2026-02-02'));
    const axis = first([merged], visits);
    expect([axis.names, axis.visits.length, axis.merged.map(({ names }) => names.machine)]).toEqual([
      lift,
      2,
      ['Gantry two'],
    ]);
    const undone = withValues(merged, { mergedInto: '' }, at('2026-02-03'));
    expect(registerOf([undone], visits).axes.map((one) => one.visits.length)).toEqual([1, 1]);
  });

  test('two axes that two devices merged into each other stay one axis with all visits', () => {
    const other = { machine: 'Gantry two', axis: 'Lift' };
    const a = withValues(newAxis(lift, at('2026-02-02')), { mergedInto: idOfNames(other) }, at('2026-02-02'));
    const b = withValues(newAxis(other, at('2026-02-02')), { mergedInto: idOfNames(lift) }, at('2026-02-02'));
    const { axes } = registerOf([a, b], [visit(lift, '2026-01-01'), visit(other, '2026-02-01')]);
    expect(axes.map(({ visits }) => visits.length)).toEqual([2]);
  });

  test('no visit is lost, whatever is merged into what', () => {
    const names = ['A', 'B', 'C', 'D'].map((axis) => ({ machine: 'M', axis }));
    const visits = names.map((one) => visit(one, '2026-01-01'));
    const ids = names.map(idOfNames);
    const into = [ids[1], ids[2], ids[0], ids[0]];
    const records = names.map((one, index) =>
      withValues(newAxis(one, at('2026-01-01')), { mergedInto: into[index] ?? '' }, at('2026-01-02')),
    );
    for (let mask = 0; mask < 16; mask++) {
      const some = records.filter((_, index) => mask & (1 << index));
      const { axes } = registerOf(some, visits);
      expect(axes.flatMap((axis) => axis.visits.map(({ id }) => id)).sort()).toEqual(visits.map(({ id }) => id).sort());
    }
  });
});

test('what is known comes from the form, else from the newest visit that says it', () => {
  const visits = [
    visit(lift, '2026-01-01', {
      motor: 'SM-40, 1',
      drive: 'D-9',
      cable: { metres: '12 m', section: '1.5', material: '' },
    }),
    visit(lift, '2026-02-01', { motor: 'SM-40, 2' }),
  ];
  expect(knownOf(first([], visits))).toMatchObject({
    motor: 'SM-40, 2',
    drive: 'D-9',
    cableMetres: '12 m',
    cableSection: '1.5',
  });
  const record = withValues(newAxis(lift, at('2026-02-02')), { motor: 'SM-48' }, at('2026-02-02'));
  expect(knownOf(first([record], visits)).motor).toBe('SM-48');
});

test('axes with the same model of motor are sisters, whatever their serial numbers', () => {
  const { axes } = registerOf(
    [],
    [
      visit(lift, '2026-03-01', { motor: 'SM-40, no. 17' }),
      visit({ machine: 'Gantry 2', axis: 'Bridge' }, '2026-02-01', { motor: 'sm-40; no. 18' }),
      visit({ machine: 'Gantry 2', axis: 'Carriage' }, '2026-01-01', { motor: 'SM-48, no. 1' }),
      visit({ machine: 'Saw', axis: 'Feed' }, '2025-01-01'),
    ],
  );
  expect(sistersOf(axes, axes[0] as Axis).map(({ names }) => names.axis)).toEqual(['Bridge']);
  expect(sistersOf(axes, axes[3] as Axis)).toEqual([]);
});

test('the search finds by machine, motor and former name, all words together', () => {
  const record = renamed(newAxis({ machine: 'Old gantry', axis: 'Z' }, at('2026-01-01')), lift, at('2026-02-01'));
  const { axes } = registerOf(
    [record],
    [visit(lift, '2026-03-01', { motor: 'SM-40' }), visit({ machine: 'Saw', axis: 'Feed' }, '2026-01-01')],
  );
  expect(searched(axes, 'old sm-40').map(({ names }) => names.axis)).toEqual(['Lift']);
  expect(searched(axes, 'gantry feed')).toEqual([]);
  expect(searched(axes, '  ')).toHaveLength(2);
});

describe('drives', () => {
  const withDrives = (...days: string[]) =>
    exchangesOf(
      first(
        [],
        days.map((day) => visit(lift, day, replaced('drive'))),
      ),
    );

  test.each<[string, string[], boolean]>([
    ['one', ['2026-01-01'], false],
    ['two within a year', ['2025-06-01', '2026-01-01'], true],
    ['two to the day a year apart', ['2025-01-01', '2026-01-01'], true],
    ['two more than a year apart', ['2024-12-01', '2026-01-01'], false],
    ['three, the first two close', ['2022-01-01', '2022-03-01', '2026-01-01'], true],
  ])('%s', (_, days, asked) => {
    expect(secondDrive(withDrives(...days)) !== undefined).toBe(asked);
  });

  test('a decision and the note that it was carried out are one exchange', () => {
    const decided = visit(lift, '2026-01-01', replaced('drive', 'motor'));
    const change = { id: 'change-1', part: 'drive', on: '2026-01-05', note: '', dropped: false };
    const noted = withChange(newAxis(lift, at('2026-01-05')), change, at('2026-01-05'));
    const exchanges = exchangesOf(first([noted], [decided]));
    expect(exchanges.map(({ part, kind }) => [part, kind])).toEqual([
      ['drive', 'noted'],
      ['motor', 'decided'],
    ]);
    expect(secondDrive(exchanges)).toBeUndefined();
    const another = withChange(noted, { ...change, id: 'change-2', on: '2026-02-05' }, at('2026-02-05'));
    expect(secondDrive(exchangesOf(first([another], [decided])))).toMatchObject({ later: { on: '2026-02-05' } });
  });

  test('only a noted exchange makes a part another part', () => {
    const decided = visit(lift, '2026-01-01', replaced('motor'));
    expect(sameSince(exchangesOf(first([], [decided])), 'motor').on).toBe('');
    const noted = withChange(
      newAxis(lift, at('2026-01-05')),
      { id: 'change-1', part: 'motor', on: '2026-01-05', note: '', dropped: false },
      at('2026-01-05'),
    );
    const exchanges = exchangesOf(first([noted], [decided]));
    expect((['motor', 'joined', 'cable'] as const).map((part) => sameSince(exchanges, part).on)).toEqual([
      '2026-01-05',
      '2026-01-05',
      '',
    ]);
  });
});

test('an axis that was taken off the list comes back when it is noted again, and what is typed then holds', () => {
  const known = withValues(newAxis(lift, at('2026-01-01')), { motor: 'M 1' }, at('2026-01-02'));
  const off = withValues(known, { removed: 'yes' }, at('2026-02-01'));
  expect(registerOf([off], []).axes).toEqual([]);
  const noted = recordOf([off], { id: idOfNames(lift), names: lift }, at('2026-03-01'));
  const back = withValues(noted, { motor: 'M 2', removed: '' }, at('2026-03-01'));
  // As the storage unites it with what is there.
  const stored = mergeAxes(off, back);
  expect(registerOf([stored], []).axes.map(({ id }) => id)).toEqual([idOfNames(lift)]);
  expect(textIn(stored, 'motor')).toBe('M 2');
});
