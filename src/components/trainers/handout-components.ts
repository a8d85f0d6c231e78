import Caution from '../Caution.astro';
import Cite from '../Cite.astro';
import Limit from '../Limit.astro';
import Reading from '../Reading.astro';
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
