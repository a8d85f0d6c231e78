import { storedTexts, storeTexts } from '../../ui/form/kept-entries.ts';
import { noProgress, type Progress, progressFile, readProgress } from './progress.ts';

const name = 'lessons';

/** The progress on this device; empty if there is none or it can't be read. */
export function keptProgress(): Progress {
  return readProgress(storedTexts(name, 'localStorage').progress ?? '') ?? noProgress;
}

export function keepProgress(progress: Progress): void {
  storeTexts(name, { progress: progressFile(progress) }, 'localStorage');
}
