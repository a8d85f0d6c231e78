import type { Typed } from '../../../kernel/form/field.ts';
import { median } from '../measure/statistics.ts';
import type { TraceTable } from './trace-table.ts';

/** What a column of the file can be, by the field that says so. */
export const columnFields = [
  'colTime',
  'colU',
  'colV',
  'colW',
  'colBus',
  'colSpeed',
  'colPosition',
  'colTorque',
] as const;

export type ColumnField = (typeof columnFields)[number];

/** Names of columns, the clearest first. Set values come after actual ones, but for the torque. */
const names: Record<ColumnField, RegExp[]> = {
  colTime: [/^(t|time|zeit|temps|tempo|tiempo|timestamp)\b/i, /^(sample|index|nr|no|n|#|abtast\w*)\b/i, /time|zeit/i],
  colU: [phaseName('u', '1', 'l1', 'a'), phaseName('r')],
  colV: [phaseName('v', '2', 'l2', 'b'), phaseName('s')],
  colW: [phaseName('w', '3', 'l3', 'c'), phaseName('t')],
  colBus: [
    /dc[ _-]?(link|bus)|bus[ _-]?(v|u)|zwischenkreis|intermediate/i,
    /^[uv][ _-]?(dc|zk|bus|zwk)|(dc|bus)[ _-]?(u|v)\b/i,
  ],
  colSpeed: [
    /(speed|velocity|drehzahl|vitesse|rpm|^n)(?!.*(set|soll|cmd|command|ref|demand|target)).*(act|ist|meas|feedback|fbk)/i,
    /speed|velocity|drehzahl|vitesse|rpm|^n[ _-]?(act|ist)?$/i,
  ],
  colPosition: [
    /(pos|angle|winkel|lage|theta)(?!.*(set|soll|cmd|command|ref|demand|target)).*(act|ist|meas|feedback|fbk)/i,
    /pos|angle|winkel|lage|theta/i,
  ],
  colTorque: [
    /(torque|moment|couple).*(set|soll|cmd|command|ref|demand|target)|(set|soll|cmd|command|ref|demand).*(torque|moment|couple)/i,
    /torque|drehmoment|couple|^m[ _-]?(soll|set|ist|act)?$|i[ _-]?q/i,
  ],
};

function phaseName(...ends: string[]): RegExp {
  return new RegExp(
    `^(i|current|strom|courant|phase|motor)[a-z]*( current| strom)?[ _.-]*(i[ _]?)?(phase[ _]?)?(${ends.join('|')})\\b(?!.*(volt|\\[v\\]))`,
    'i',
  );
}

/** Names without their units, which may hold letters that mean a phase. */
const bareName = (name: string) => name.replace(/[[(][^\])]*[\])]|\/\s*(m?s|m?a|v|min|rpm)\s*$|,\s*\S+$/gi, '').trim();

/**
 * Proposes what the columns are, from their names, and from the figures if the names say nothing: a time rises in equal steps,
 * three phase currents add up to nothing, a bus is positive and nearly constant. Texts are numbers of columns, from 1. Only a
 * proposal: the person sees it with the first values and can change each.
 */
export function proposedColumns(table: TraceTable): Record<ColumnField, string> {
  const proposal = Object.fromEntries(columnFields.map((field) => [field, ''])) as Record<ColumnField, string>;
  const taken = new Set<number>();
  const take = (field: ColumnField, column: number | undefined) => {
    if (column === undefined || column < 0 || taken.has(column) || proposal[field] !== '') return;
    taken.add(column);
    proposal[field] = String(column + 1);
  };
  for (const field of columnFields) {
    for (const pattern of names[field]) {
      take(
        field,
        table.names.findIndex((name, column) => !taken.has(column) && pattern.test(bareName(name))),
      );
    }
  }
  if (proposal.colTime === '' && isTime(table.columns[0])) take('colTime', 0);
  if (proposal.colU === '' && proposal.colV === '') {
    for (const [place, column] of (balanced(table, taken) ?? []).entries())
      take((['colU', 'colV', 'colW'] as const)[place] ?? 'colU', column);
  }
  return proposal;
}

function isTime(values: Float64Array | undefined): boolean {
  if (values === undefined || values.length < 3) return false;
  const steps = values.subarray(1).map((value, i) => value - (values[i] ?? 0));
  const usual = median(steps);
  return usual > 0 && steps.filter((one) => Math.abs(one - usual) < usual * 0.2).length > steps.length * 0.95;
}

/** Three neighbouring columns whose sum is small beside them. */
function balanced({ columns, rows }: TraceTable, taken: ReadonlySet<number>): number[] | undefined {
  for (let first = 0; first + 2 < columns.length; first++) {
    const three = [first, first + 1, first + 2];
    if (three.some((column) => taken.has(column))) continue;
    let [sum, all] = [0, 0];
    for (let row = 0; row < Math.min(rows, 20_000); row++) {
      const [u = 0, v = 0, w = 0] = three.map((column) => columns[column]?.[row] ?? 0);
      sum += Math.abs(u + v + w);
      all += Math.abs(u) + Math.abs(v) + Math.abs(w);
    }
    if (all > 0 && sum < 0.1 * all) return three;
  }
  return undefined;
}

const units: [RegExp, string][] = [
  [/^(s|sec|seconds?)$/i, 's'],
  [/^(ms|msec)$/i, 'ms'],
  [/^([uµμ]s|usec)$/i, 'us'],
  [/^samples?$/i, 'samples'],
  [/^ma$/i, 'mA'],
  [/^a$/i, 'A'],
  [/^a[ _]?(rms|eff)$/i, 'rms'],
  [/^(%|percent)$/i, 'percent'],
  [/^v$/i, 'V'],
  [/^(rpm|u?\/min|1\/min|min-1|min⁻¹|r\/min)$/i, 'rpm'],
  [/^rad\/s$/i, 'rad/s'],
  [/^(1\/s|rps|s-1|s⁻¹|rev\/s)$/i, '1/s'],
];

const unitOf = (text: string | undefined, allowed: readonly string[]) => {
  const found = units.find(([pattern]) => pattern.test(text ?? ''))?.[1];
  return found !== undefined && allowed.includes(found) ? found : '';
};

/** The units that the head of the file states for these columns. What it does not state is left to be asked. */
export function statedUnits(table: TraceTable, chosen: Typed): Typed {
  const of = (field: ColumnField) => {
    const column = Number(chosen[field]) - 1;
    return column >= 0 && table.clocks[column] ? 's' : table.units[column];
  };
  return {
    timeUnit: unitOf(of('colTime'), ['s', 'ms', 'us', 'samples']),
    currentUnit: unitOf(of('colU'), ['A', 'rms', 'mA', 'percent']),
    busUnit: unitOf(of('colBus'), ['V']),
    speedUnit: unitOf(of('colSpeed'), ['rpm', 'rad/s', '1/s']),
  };
}
