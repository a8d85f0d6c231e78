import type { Action, Result } from './action.ts';
import { type CaseKey, encodeCase } from './case-code.ts';
import { drawMachine } from './draw-machine.ts';
import type { Machine } from './machine.ts';
import { perform } from './perform.ts';
import { type Purpose, purposeOf } from './purpose.ts';
import type { Unsafe } from './unsafe-acts.ts';

/** One act and its result. `unsafe` and `purpose` are for the feedback: the person does not see them before the end. */
export interface Entry {
  action: Action;
  result: Result;
  unsafe: Unsafe[];
  purpose: Purpose | undefined;
  /** The same measurement was taken before, and nothing has changed since. */
  again: boolean;
}

/** One person's run through a case. The key and the acts reproduce it with the same readings. */
export class CaseRun {
  readonly code: string;
  readonly machine: Machine;
  readonly entries: Entry[] = [];
  private readonly takenUnchanged = new Set<string>();

  constructor(key: CaseKey, actions: readonly Action[] = []) {
    this.code = encodeCase(key);
    this.machine = drawMachine(key.fault, key.seed, key.windingCelsius);
    for (const action of actions) this.do(action);
  }

  do(action: Action): Entry {
    const { machine } = this;
    const before = machine.unsafe.length;
    const purpose = purposeOf(machine.state, action);
    const again = this.isAgain(action);
    const result = perform(machine, action);
    const entry = { action, result, unsafe: machine.unsafe.slice(before), purpose, again };
    this.entries.push(entry);
    return entry;
  }

  private isAgain(action: Action): boolean {
    if (action.act !== 'measure') {
      this.takenUnchanged.clear();
      return false;
    }
    const same = JSON.stringify(action);
    const again = this.takenUnchanged.has(same);
    this.takenUnchanged.add(same);
    return again;
  }
}
