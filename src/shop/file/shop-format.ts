import type { Format } from '../merge/sync.ts';
import { readShopText, writeAxis, writeState } from './shop-file.ts';

/** The files of the shared folder. `now`: gives the ISO time with offset. */
export function shopFormatAt(now: () => string): Format {
  return {
    read(text) {
      const read = readShopText(text);
      if (!read.ok) return read.problem;
      const { states, axes, problems } = read.value;
      return { states, axes, problems: problems.map(({ id, problem }) => ({ name: id, problem })) };
    },
    write: (state) => writeState(state, now()),
    writeAxis,
  };
}
