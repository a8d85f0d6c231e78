import Caution from '../../site/parts/Caution.astro';
import Cite from '../../site/parts/Cite.astro';
import Limit from '../../site/parts/Limit.astro';
import Reading from '../articles/Reading.astro';
import Nothing from './Nothing.astro';

/** What articles use, without what a sheet of paper can't: forms and drawings leave no trace on it. */
export const handoutComponents = {
  Calculator: Nothing,
  Caution,
  Cite,
  Figure: Nothing,
  FormerAddress: Nothing,
  Limit,
  Reading,
};
