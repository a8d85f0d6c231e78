import type { HazardId } from '../site/parts/hazards.ts';

/** What lists of calculators say about one. */
export interface About {
  /** Name of its folder, of its page and in links; never changes. */
  name: string;
  title: string;
  /** One line: which readings it takes, and which question it answers. */
  question: string;
}

/** What the page of a calculator says around the form, and how it is found. */
export interface PageHead {
  /** One paragraph: what it judges, and from what. It follows the form. */
  intro: string;
  hazards: readonly HazardId[];
  /** All preconditions in one line, in sight before the first field. */
  conditions: string;
  preconditions: readonly string[];
  /** Other words that people type for it in the search box. */
  otherWords: readonly string[];
  /** Ids of articles to read with it. */
  related: readonly string[];
}
