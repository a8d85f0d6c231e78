import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { Band } from '../../../../src/ui/plot/Band.tsx';
import { Curve } from '../../../../src/ui/plot/Curve.tsx';
import { decadesAround, spanOf } from '../../../../src/ui/plot/domain.ts';
import { plotFrame } from '../../../../src/ui/plot/frame.ts';
import { LimitLine } from '../../../../src/ui/plot/LimitLine.tsx';
import { Plot } from '../../../../src/ui/plot/Plot.tsx';
import { Points } from '../../../../src/ui/plot/Points.tsx';

const frame = plotFrame(
  { kind: 'linear', domain: [0, 10], label: 'time, min', format: String },
  { kind: 'log10', domain: [1, 1000], label: 'reading, MΩ', format: String },
  { left: 60, right: 340, top: 30, bottom: 330 },
);

test('values are placed by the axes', () => {
  expect([frame.x.place(0), frame.x.place(5), frame.x.place(10)]).toEqual([60, 200, 340]);
  expect([1, 10, 100, 1000].map((value) => Math.round(frame.y.place(value)))).toEqual([330, 230, 130, 30]);
  expect(frame.y.ticks.map(({ text }) => text)).toEqual(['1', '10', '100', '1000']);
});

test('a domain holds its values, in whole decades or with some room', () => {
  expect(decadesAround([3e5, 2e7])).toEqual([1e5, 1e8]);
  expect(decadesAround([1e6])).toEqual([1e6, 1e7]);
  expect(spanOf([3, 1, 2])).toEqual([1, 3]);
  expect(spanOf([20])).toEqual([18, 22]);
});

test('a curve that leaves the plot is drawn at its edge, and no path contains NaN', () => {
  const path = renderToString(
    <Curve
      frame={frame}
      points={[
        [-5, 10],
        [5, 0],
        [20, -1],
      ]}
    />,
  );
  expect(path).toBe('<path class="curve solid" d="M60.0 230.0L200.0 330.0L340.0 330.0"></path>');
});

test('a limit outside the axis is not drawn', () => {
  expect(renderToString(<LimitLine frame={frame} at={100} text="limit" />)).toContain('M60 130.0H340');
  expect(renderToString(<LimitLine frame={frame} at={0.1} text="limit" />)).toBe('');
});

test('the drawing has a name, a description and its numbers as a table', () => {
  const html = renderToString(
    <Plot
      id="p"
      title="A title"
      desc="A description"
      frame={frame}
      table={{ summary: 'As a table', head: ['Time', 'Reading'], rows: [['1 min', '40 MΩ']] }}
    >
      <Band frame={frame} upper={[[0, 100]]} lower={[[0, 10]]} />
      <Points frame={frame} points={[{ x: 1, y: 40, shape: 'above', text: 'U' }]} />
    </Plot>,
  );
  expect(html).toContain('role="img" aria-labelledby="p-title p-desc"');
  expect(html).toContain('<title id="p-title">A title</title><desc id="p-desc">A description</desc>');
  expect(html).toContain('<th scope="row">1 min</th><td>40 MΩ</td>');
  expect(html).toContain('class="point above"');
});
