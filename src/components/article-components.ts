import Caution from './Caution.astro';
import Cite from './Cite.astro';
import Figure from './Figure.astro';
import FormerAddress from './FormerAddress.astro';
import Heading2 from './Heading2.astro';
import Heading3 from './Heading3.astro';
import Heading4 from './Heading4.astro';
import Limit from './Limit.astro';
import Reading from './Reading.astro';
import TableScroll from './TableScroll.astro';

/**
 * What every article may use without importing it, and what replaces plain Markdown elements. `Calculator` is not among
 * them: src/markdown/import-calculator.ts gives it to the articles that have one.
 */
export const articleComponents = {
  Caution,
  Cite,
  Figure,
  FormerAddress,
  Limit,
  Reading,
  h2: Heading2,
  h3: Heading3,
  h4: Heading4,
  table: TableScroll,
};
