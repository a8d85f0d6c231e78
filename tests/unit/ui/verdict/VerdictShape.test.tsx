import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { VerdictShape } from '../../../../src/ui/verdict/VerdictShape.tsx';

const drawn = (['go', 'no-go', 'undecided', 'stop', 'empty'] as const).map((verdict) => {
  const svg = renderToString(<VerdictShape verdict={verdict} />);
  return { verdict, paths: [...svg.matchAll(/ d="([^"]+)"/g)].map(([, d]) => d) };
});

test('every verdict has a sign of its own, and an outline or a dashed one', () => {
  expect(new Set(drawn.map(({ paths }) => paths[1])).size).toBe(drawn.length);
  expect(new Set(drawn.map(({ verdict, paths }) => `${paths[0]} ${verdict === 'empty'}`)).size).toBe(drawn.length);
});

test('undecided has neither of the other outlines, and its filled half is beside the open half', () => {
  const of = (wanted: string) => drawn.find(({ verdict }) => verdict === wanted)?.paths ?? [];
  expect(of('go')[0]).not.toBe(of('undecided')[0]);
  const rightmost = [...(of('undecided')[1] ?? '').matchAll(/M(\d+)/g)].map(([, x]) => Number(x));
  const leftmost = [...(of('undecided')[0] ?? '').matchAll(/M(\d+)/g)].map(([, x]) => Number(x));
  expect(rightmost).toEqual(leftmost);
});
