import { defineMdastPlugin } from 'satteri';

/**
 * Imports the calculators into those articles that use one, so that no other article carries their styles and scripts.
 * Authors write `<Calculator name="…" />` and no more.
 */
export const importCalculator = defineMdastPlugin({
  name: 'import-calculator',
  before(root, context) {
    if (!context.source.includes('<Calculator')) return;
    context.prependChild(root, { raw: "import Calculator from '/src/library/calculators/Calculator.astro';" });
  },
});
