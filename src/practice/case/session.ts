import type { Action, Result } from './action.ts';
import { type CaseKey, encodeCase } from './case-code.ts';
import type { Unsafe } from './judge.ts';
import { perform } from './perform.ts';
import { type Purpose, purposeOf } from './purpose.ts';
import { setUp } from './set-up.ts';
import type { World } from './world.ts';

/** One act with what came of it. `unsafe` and `purpose` are for the end: a person does not see them before. */
export interface Entry {
  action: Action;
  result: Result;
  unsafe: Unsafe[];
  purpose: Purpose | undefined;
  /** The same measurement was taken before, and nothing was changed since. */
  again: boolean;
}

/** A person's way through one case. The key and the acts make it anew, every reading the same. */
export class Session {
  readonly code: string;
  readonly world: World;
  readonly entries: Entry[] = [];
  private readonly takenUnchanged = new Set<string>();

  constructor(key: CaseKey, actions: readonly Action[] = []) {
    this.code = encodeCase(key);
    this.world = setUp(key.fault, key.seed, key.windingCelsius);
    for (const action of actions) this.do(action);
  }

  do(action: Action): Entry {
    const { world } = this;
    const before = world.unsafe.length;
    const purpose = purposeOf(world.state, action);
    const again = this.isAgain(action);
    const result = perform(world, action);
    const entry = { action, result, unsafe: world.unsafe.slice(before), purpose, again };
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
