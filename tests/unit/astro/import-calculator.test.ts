import { mdxToJs } from 'satteri';
import { expect, test } from 'vitest';
import { importCalculator } from '../../../src/astro/import-calculator.ts';

const compiled = (article: string) => (mdxToJs(article, { mdastPlugins: [importCalculator] }) as { code: string }).code;

test('an article with a calculator imports it, once', () => {
  const code = compiled('## A\n\n<Calculator name="bridge" />\n\n<Calculator name="winding" />');
  expect(code.match(/import Calculator from/g)).toHaveLength(1);
});

test('an article without one imports nothing', () => {
  expect(compiled('## A\n\nNo form here.')).not.toContain('Calculator');
});
