import type { AxisRecord } from '../../axes/record/axis-schema.ts';
import { mergeAxes } from '../../axes/record/merge-axes.ts';
import { canonical } from './content.ts';

/** What the records of axes of this device and of a folder make together: they merge by themselves, without loss. */
export interface AxisExchange {
  /** Every axis of either, united. */
  axes: AxisRecord[];
  /** Those that are to be stored here. */
  store: AxisRecord[];
  /** Those of which no file has everything. */
  write: AxisRecord[];
}

/** The revision belongs to one device. */
const contentOf = ({ revision: _here, ...content }: AxisRecord) => canonical(content);

export function exchangeAxes(here: readonly AxisRecord[], theirs: readonly AxisRecord[]): AxisExchange {
  const united = new Map<string, AxisRecord>();
  for (const axis of [...here, ...theirs]) {
    const other = united.get(axis.id);
    // United with itself a record is in the order in which every device has it.
    united.set(axis.id, mergeAxes(other ?? axis, axis));
  }
  const axes = [...united.values()];
  const missingIn = (records: readonly AxisRecord[]) => {
    const known = new Set(records.map((axis) => `${axis.id} ${contentOf(axis)}`));
    return axes.filter((axis) => !known.has(`${axis.id} ${contentOf(axis)}`));
  };
  return { axes, store: missingIn(here), write: missingIn(theirs) };
}
