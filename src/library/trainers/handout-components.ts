import Caution from '../../site/parts/Caution.astro';
import Cite from '../../site/parts/Cite.astro';
import Limit from '../../site/parts/Limit.astro';
import PageLink from '../articles/PageLink.astro';
import Reading from '../articles/Reading.astro';
import FoldOnPaper from './FoldOnPaper.astro';
import Nothing from './Nothing.astro';

/** The components of articles, without forms and drawings, which a handout leaves out. */
export const handoutComponents = {
  Calculator: Nothing,
  Caution,
  Cite,
  Figure: Nothing,
  Fold: FoldOnPaper,
  FormerAddress: Nothing,
  Limit,
  PageLink,
  Reading,
};
