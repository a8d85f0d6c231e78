import { limitValue } from '../../kernel/limits.ts';
import { type Problem, refusal } from '../../kernel/link/problem.ts';
import type { Photograph } from './photograph.ts';

export type PhotographProblemKind = 'no-picture' | 'not-encoded' | 'too-many' | 'no-room';

const megabytes = (bytes: number) => `${bytes / 1_000_000} MB`;

const messages: Record<PhotographProblemKind, (where: string) => string> = {
  'no-picture': (name) =>
    `${name} is no picture that this browser can read, or it is damaged. Choose a photograph, as JPEG or PNG. Nothing was changed.`,
  'not-encoded': (name) =>
    `This browser could not scale ${name} down, so it was not attached. Close other tabs, then try again.`,
  'too-many': () =>
    `A visit holds ${limitValue('photographs-number')} photographs, and this one would be more. Remove one that nobody needs, then attach it again.`,
  'no-room': () =>
    `The photographs of a visit may take ${megabytes(limitValue('photographs-visit'))}, and with this one they would take more. Remove one that nobody needs, then attach it again.`,
};

export const photographRefused = refusal(messages);

/** Why these photographs are more than one visit may hold; undefined if they are not. */
export function overBudget(photographs: readonly Photograph[]): Problem<PhotographProblemKind> | undefined {
  if (photographs.length > limitValue('photographs-number')) return photographRefused('too-many').problem;
  const bytes = photographs.reduce((sum, { jpeg }) => sum + jpeg.length, 0);
  return bytes > limitValue('photographs-visit') ? photographRefused('no-room').problem : undefined;
}
