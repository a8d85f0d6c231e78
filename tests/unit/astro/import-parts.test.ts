import { mdxToJs } from 'satteri';
import { expect, test } from 'vitest';
import { importParts } from '../../../src/astro/import-parts.ts';

const compiled = (article: string) => (mdxToJs(article, { mdastPlugins: [importParts] }) as { code: string }).code;

test.each(['Calculator', 'SimulatedFigure'])('an article with a %s imports it, once, and nothing else', (part) => {
  const code = compiled(`## A\n\n<${part} name="bridge" />\n\n<${part} name="winding" />`);
  expect(code.match(/import \w+ from ['"]\/src/g)).toHaveLength(1);
  expect(code).toMatch(new RegExp(`import ${part} from`));
});

test('an article with both imports both, and one without them nothing', () => {
  expect(compiled('<Calculator name="a" />\n\n<SimulatedFigure name="b" />').match(/from ['"]\/src/g)).toHaveLength(2);
  expect(compiled('## A\n\nNo form here.')).not.toMatch(/Calculator|SimulatedFigure/);
});
