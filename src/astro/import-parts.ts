import { defineMdastPlugin } from 'satteri';

/** Parts with styles and scripts of their own, and where they are. */
const parts = {
  Calculator: '/src/library/calculators/Calculator.astro',
  SimulatedFigure: '/src/library/articles/SimulatedFigure.astro',
};

/**
 * Imports calculators and simulated figures into those articles that use them, so that no other article carries their
 * styles and scripts. Authors write `<Calculator name="…" />` or `<SimulatedFigure name="…" />` and no more.
 */
export const importParts = defineMdastPlugin({
  name: 'import-parts',
  before(root, context) {
    for (const [name, path] of Object.entries(parts)) {
      if (context.source.includes(`<${name} `)) context.prependChild(root, { raw: `import ${name} from '${path}';` });
    }
  },
});
