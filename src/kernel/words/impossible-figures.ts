import type { Step } from '../assessment/assessment.ts';
import type { FigureFinding, FigureStepCode } from '../assessment/possible-figures.ts';
import type { FindingSentences, StepSentences } from './sentences.ts';

/** What every calculator says about an impossible figure. The forms already refuse such figures. */
export const figureFindings: FindingSentences<FigureFinding> = {
  'figure-impossible': ({ readings }) =>
    `No instrument shows such a figure: ${readings.join(', ')}. A figure must be a number and not below zero where nothing can be. Nothing is judged.`,
};

export const figureSteps: StepSentences<Step<FigureStepCode>> = {
  'read-figure-again': () => 'Read the instrument again, and type what it shows.',
};
