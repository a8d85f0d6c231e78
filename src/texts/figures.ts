import type { FigureCode, FigureStepCode, Finding } from '../calc/index.ts';

/** What every calculator says of a figure that no instrument can have shown. The forms refuse such a figure by themselves. */
export const figureFindings: Record<FigureCode, (finding: Finding) => string> = {
  'figure-impossible': ({ readings }) =>
    `No instrument shows such a figure: ${readings.join(', ')}. A figure must be a number and not below zero where nothing can be. Nothing is judged.`,
};

export const figureSteps: Record<FigureStepCode, () => string> = {
  'read-figure-again': () => 'Read the instrument again, and type what it shows.',
};
