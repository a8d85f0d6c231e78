import { faultIds } from '../../src/practice/simulator/faulted-axis.ts';
import { missedGoals } from './goals.ts';
import { type Outcome, play } from './outcome.ts';
import { type Row, summarise } from './summary.ts';

const columns: [title: string, width: number, cell: (row: Row) => string | number][] = [
  ['exact', 6, ({ exact }) => exact],
  ['over', 5, ({ overCalled }) => overCalled],
  ['missed', 7, ({ missed }) => missed],
  ['not told', 9, ({ notTold }) => notTold],
  ['steps', 6, ({ meanSteps }) => meanSteps.toFixed(1)],
  ['unsafe', 7, ({ unsafe }) => unsafe.length],
];

const labelWidth = 54;

function line(label: string, cells: (string | number)[], last: string): string {
  const padded = cells.map((cell, position) => String(cell).padStart(columns[position]?.[1] ?? 0));
  return `${label.padEnd(labelWidth)}${padded.join('')}  ${last}`;
}

function decisionsOf({ decisions }: Row): string {
  const list = [...decisions].sort((a, b) => b[1] - a[1]);
  return list.map(([words, count]) => (list.length === 1 ? words : `${words} (${count})`)).join(', ');
}

/** Every fault has its own axes. */
const outcomesOf = (fault: string, seeds: number): Outcome[] =>
  Array.from({ length: seeds }, (_, position) => play(fault, faultIds.indexOf(fault) * 100_000 + position));

/** Prints the table of every fault and combination, and the missed goals; true if there are none. */
export function proveTidy(seeds: number, only: string | undefined): boolean {
  console.log(
    `${seeds} visits to each fault, winding from 5 to 80 °C. Exact: every bad part proven, and no other. Over: a sound part ` +
      `proven bad.\nMissed: a bad part not proven. Not told: undecided, or the drive by exclusion, with the test that would tell.\n`,
  );
  console.log(
    line(
      'fault',
      columns.map(([title]) => title),
      'decision',
    ),
  );
  const broken: string[] = [];
  const rows: Row[] = [];
  for (const fault of faultIds.filter((id) => only === undefined || id === only)) {
    const outcomes = outcomesOf(fault, seeds);
    const row = summarise(fault, outcomes);
    rows.push(row);
    broken.push(...missedGoals(fault, outcomes), ...row.unsafe.slice(0, 3));
    console.log(
      line(
        row.label,
        columns.map(([, , cell]) => cell(row)),
        decisionsOf(row),
      ),
    );
  }

  const sum = (of: (row: Row) => number) => rows.reduce((total, row) => total + of(row), 0);
  console.log(
    `\n${sum(({ visits }) => visits)} visits: ${sum(({ exact }) => exact)} exact, ${sum(({ overCalled }) => overCalled)} with a sound part proven bad, ` +
      `${sum(({ notTold }) => notTold)} left undecided or by exclusion, ${sum(({ unsafe }) => unsafe.length)} unsafe steps`,
  );
  const mean = (of: (row: Row) => number) => sum(of) / Math.max(rows.length, 1);
  console.log(
    `On average ${mean(({ meanMinutes }) => meanMinutes).toFixed(0)} minutes and ` +
      `${mean(({ meanPowerUps }) => meanPowerUps).toFixed(2)} switch-ons a visit, every fault alike.`,
  );
  console.log(broken.length === 0 ? 'Every goal is met.' : `Goals missed:\n  ${broken.join('\n  ')}`);
  return broken.length === 0;
}
