import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { FigureView } from '../../../../src/practice/figures/FigureView.tsx';
import { type SimulatedFigure, startOf, withStop } from '../../../../src/practice/figures/simulated-figure.ts';
import { uncomputed } from '../../../browser/support/kept-drawing.ts';
import { filesOf } from '../../../content/support/files.ts';

const folder = join(import.meta.dirname, '../../../../src/practice/figures');
const names = readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
  entry.isDirectory() ? [entry.name] : [],
);
const figures = await Promise.all(
  names.map(
    async (name): Promise<[string, SimulatedFigure<unknown>]> => [
      name,
      (await import(join(folder, name, 'figure.tsx'))).figure,
    ],
  ),
);
const articles = filesOf('content/articles/**/*.mdx');

test('each is in one article', () => {
  const placed = articles.flatMap(({ text }) =>
    [...text.matchAll(/<SimulatedFigure name="([\w-]+)" \/>/g)].map((match) => match[1]),
  );
  expect(placed.sort()).toEqual(names);
});

describe.each(figures)('%s', (name, figure) => {
  const start = startOf(figure);
  const shown = (settings: readonly number[]) => figure.values(figure.compute(settings));

  test('has the name of its folder, controls with stops, and rows that exist', () => {
    expect(figure.id).toBe(name);
    for (const { stops, start: first, as } of figure.controls) {
      expect(new Set(stops).size).toBe(stops.length);
      expect(stops[first]).toBeDefined();
      expect(stops.length).toBeLessThanOrEqual(as === 'choice' ? 6 : 40);
    }
    for (const row of figure.rows) {
      expect(row).toHaveLength(start.length);
      expect(row.map((stop, place) => figure.controls[place]?.stops[stop])).not.toContain(undefined);
    }
    expect(new Set(figure.rows.map(String)).size).toBe(figure.rows.length);
  });

  test('has a value for each name at every stop, and says what it means', () => {
    for (const [place, { stops }] of figure.controls.entries()) {
      for (const stop of stops.keys()) {
        const result = figure.compute(withStop(start, place, stop));
        const values = figure.values(result);
        expect(values.map(([label]) => label)).toEqual(shown(start).map(([label]) => label));
        expect(values.map(([, text]) => text).join(' ')).not.toMatch(/NaN|undefined|Infinity|^ | $/);
        expect(figure.says(result)).toMatch(/^[A-Z].*[.]$/);
      }
    }
  });

  test('each control changes something from where it stands', () => {
    for (const [place, { stops }] of figure.controls.entries()) {
      const all = [...stops.keys()].map((stop) => {
        const result = figure.compute(withStop(start, place, stop));
        return figure.says(result) + figure.values(result).join();
      });
      expect(new Set(all).size).toBeGreaterThan(1);
    }
  });

  test('without script it is drawn, with its values, its table and the word that it is a model', () => {
    const html = render(<FigureView figure={figure} />);
    expect(html).not.toMatch(uncomputed);
    for (const [label, text] of shown(start)) expect(html).toContain(`<span>${label}</span> <b>${text}</b>`);
    for (const row of figure.rows) {
      for (const [, text] of shown(row)) expect(html).toContain(`<td>${text}</td>`);
    }
    expect(html).toMatch(/Model: [^<]*\. It is a model, not your drive\.<\/p>/);
    expect(html).toMatch(/<title [^>]*>[A-Z][^<]*[^.<]<\/title>/);
  });
});
