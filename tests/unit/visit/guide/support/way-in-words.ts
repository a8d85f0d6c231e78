import { nextStep } from '../../../../../src/visit/guide/next-step.ts';
import { type Given, visitOf } from './visit.ts';

/** The way in one line: each step, with its status and problem unless it is done. */
export const way = (history: Given[], breakAt = 0) =>
  nextStep(visitOf(history, breakAt))
    .path.map(({ id, status, problem }) =>
      [id, ...(status === 'done' ? [] : [status || 'no status']), problem ?? ''].join(' ').trim(),
    )
    .join(', ');

/** Its end, from this step on. */
export const from = (id: string, history: Given[], breakAt = 0) => {
  const all = way(history, breakAt).split(', ');
  return all.slice(all.findIndex((one) => one.startsWith(id))).join(', ');
};
