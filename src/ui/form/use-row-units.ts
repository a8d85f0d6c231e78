import { useRef } from 'preact/hooks';
import type { FormField, Typed } from '../../kernel/form/field.ts';
import { rowUnit, rowUnitInDoubt, withRowUnit } from '../../kernel/form/row-unit.ts';

/** A unit that comes from another field of the row. */
export interface UnitOfRow {
  /** Such as `kΩ`. */
  symbol: string;
  /** Label of the field in which it was typed. */
  from: string;
}

export interface RowUnits {
  /** The person types in this field from now on: no other is completed, whatever its entry came from. */
  begin: (id: string) => void;
  end: () => void;
  isAt: (id: string) => boolean;
  /**
   * The entries with the unit of the row written into the field that is typed in; the same object if none is, or if it
   * must be confirmed.
   */
  complete: (typed: Typed) => Typed;
  /** What stands in the field with the unit of the row, which the person must confirm. */
  inDoubt: (id: string, typed: Typed) => string | undefined;
  /** The person has confirmed that: the text to write. */
  confirm: (id: string, typed: Typed) => string | undefined;
  /** The unit that a figure typed into this empty field will have. */
  offered: (id: string, typed: Typed) => UnitOfRow | undefined;
  /** The unit that the figure in this field has from its row. */
  taken: (id: string, typed: Typed) => UnitOfRow | undefined;
  /** The field whose figure got its unit last, once the person has left it. */
  lastTaken: (typed: Typed) => string | undefined;
}

/**
 * Takes the unit of a row for figures that are typed without one. Only while they are typed: what comes from a record, a
 * link or this device reads by itself, as everywhere else. A unit that may hide a worse reading is written only when the
 * person confirms it, which the next key of the keypad does, with the whole reading on it.
 */
export function useRowUnits(fields: readonly FormField[]): RowUnits {
  const at = useRef<string>();
  const written = useRef<Record<string, UnitOfRow & { text: string }>>({});
  const lastTaken = useRef<string>();
  const unitFor = (id: string, typed: Typed): UnitOfRow | undefined => {
    const unit = rowUnit(fields, id, typed);
    return unit && { symbol: unit.symbol, from: unit.from.label };
  };
  const write = (id: string, typed: Typed): string | undefined => {
    const text = withRowUnit(fields, id, typed);
    const unit = unitFor(id, typed);
    if (text === undefined || unit === undefined) return undefined;
    written.current[id] = { ...unit, text };
    lastTaken.current = id;
    return text;
  };
  const inDoubt = (id: string, typed: Typed) => (at.current === id ? rowUnitInDoubt(fields, id, typed) : undefined);
  const complete = (typed: Typed): Typed => {
    const id = at.current;
    if (id === undefined || inDoubt(id, typed) !== undefined) return typed;
    const text = write(id, typed);
    return text === undefined ? typed : { ...typed, [id]: text };
  };
  return {
    begin: (id) => {
      at.current = id;
    },
    end: () => {
      at.current = undefined;
    },
    lastTaken: (typed) => {
      const id = lastTaken.current;
      return id !== undefined && id !== at.current && written.current[id]?.text === typed[id] ? id : undefined;
    },
    isAt: (id) => at.current === id,
    complete,
    inDoubt,
    confirm: (id, typed) => (inDoubt(id, typed) === undefined ? undefined : write(id, typed)),
    offered: (id, typed) => ((typed[id] ?? '').trim() === '' ? unitFor(id, typed) : undefined),
    taken: (id, typed) => {
      if (inDoubt(id, typed) !== undefined) return undefined;
      if (at.current === id && withRowUnit(fields, id, typed) !== undefined) return unitFor(id, typed);
      const last = written.current[id];
      return last !== undefined && last.text === typed[id] ? last : undefined;
    },
  };
}
