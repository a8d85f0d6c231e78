import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { VerdictShape } from '../../../src/islands/form/VerdictShape.tsx';

const drawn = (['go', 'no-go', 'undecided', 'stop', 'empty'] as const).map((verdict) => {
  const svg = renderToString(<VerdictShape verdict={verdict} />);
  return { verdict, paths: [...svg.matchAll(/ d="([^"]+)"/g)].map(([, d]) => d), svg };
});

test('every verdict has a sign of its own, and an outline that colour is not needed for', () => {
  expect(new Set(drawn.map(({ paths }) => paths[1])).size).toBe(drawn.length);
  expect(new Set(drawn.map(({ paths, svg }) => `${paths[0]} ${svg.includes('hollow')}`)).size).toBe(drawn.length);
});

test('undecided is half filled and half open, with no sign drawn upon a filled ground', () => {
  const { svg } = drawn.find(({ verdict }) => verdict === 'undecided') ?? { svg: '' };
  expect(svg).toMatch(/class="open-half".*class="filled-half"/);
  expect(svg).not.toMatch(/class="(outline|sign)/);
});
