import FormerAddress from '../../site/FormerAddress.astro';
import Caution from '../../site/parts/Caution.astro';
import Cite from '../../site/parts/Cite.astro';
import Heading2 from '../../site/parts/Heading2.astro';
import Heading3 from '../../site/parts/Heading3.astro';
import Heading4 from '../../site/parts/Heading4.astro';
import Limit from '../../site/parts/Limit.astro';
import TableScroll from '../../site/parts/TableScroll.astro';
import Figure from './Figure.astro';
import Fold from './Fold.astro';
import PageLink from './PageLink.astro';
import Reading from './Reading.astro';

/**
 * What every article may use without importing it, and what replaces plain Markdown elements. `Calculator` is not among
 * them: src/astro/import-parts.ts gives it to the articles that have one, and `SimulatedFigure` too.
 */
export const articleComponents = {
  Caution,
  Cite,
  Figure,
  Fold,
  FormerAddress,
  Limit,
  PageLink,
  Reading,
  h2: Heading2,
  h3: Heading3,
  h4: Heading4,
  table: TableScroll,
};
