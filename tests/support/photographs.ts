import type { Photograph } from '../../src/visit/record/photograph.ts';
import { plainJpegOf } from './jpegs.ts';

/** A photograph of the step `inspect` without a caption; each name gives its own picture. */
export function photograph(name: string, parts: Partial<Photograph> = {}): Photograph {
  return {
    id: `photograph-${name}`,
    step: 'inspect',
    at: '2026-03-03T06:01:00+01:00',
    changedAt: '2026-03-03T06:01:00+01:00',
    caption: '',
    jpeg: plainJpegOf(
      20,
      [...name].reduce((sum, letter) => sum + letter.charCodeAt(0), 0),
    ),
    ...parts,
  };
}
