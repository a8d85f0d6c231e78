export const limitStatuses = ['standard', 'regulation', 'textbook', 'common-practice', 'project-judgement'] as const;

type LimitStatus = (typeof limitStatuses)[number];

interface Status {
  /** The name on the Tables page. */
  words: string;
  /** What it means, for the key of the Tables page. */
  meaning: string;
  /** The mark beside a figure in the text that must not be mistaken for a published one. */
  mark: string | null;
}

export const limitStatus: Record<LimitStatus, Status> = {
  standard: { words: 'Published standard', meaning: 'The named standard gives this figure.', mark: null },
  regulation: { words: 'Regulation', meaning: 'The named law or regulation gives this figure.', mark: null },
  textbook: {
    words: 'Textbook or paper',
    meaning: 'A textbook, handbook or paper gives this figure; no standard asks for it.',
    mark: null,
  },
  'common-practice': {
    words: 'Common practice',
    meaning: 'The trade works with this figure, and no standard sets it. The note gives its reason.',
    mark: 'practice',
  },
  'project-judgement': {
    words: 'Judgement of this fieldbook',
    meaning: 'The authors chose this figure, because a decision needs one; the note says why.',
    mark: 'judgement',
  },
};

export const recalledWords = 'Recalled from memory, not read in the publication. Check it before you rely on it.';

/** The mark beside a figure, or a source, that nobody on the project has read. */
export const fromMemory = 'from memory';

/** The mark beside a figure in the text; empty for a published figure that was read. */
export function limitMark(status: string, recalled: boolean): string {
  return [limitStatus[status as LimitStatus].mark, recalled ? fromMemory : null]
    .filter((word) => word !== null)
    .join(', ');
}
