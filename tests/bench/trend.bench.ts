import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { cellsOf } from '../../src/calculators/trend/cells.ts';
import { assessTrend } from '../../src/calculators/trend/rule/assess.ts';
import type { TrendAssessment } from '../../src/calculators/trend/rule/input.ts';
import { readTrendTable } from '../../src/calculators/trend/rule/table.ts';
import { limitValue } from '../../src/kernel/limits.ts';
import { missing } from '../../src/kernel/reading/reading.ts';
import { loadComponents } from './load-component.ts';
import { type Bench, milliseconds } from './measured.ts';
import { trendFile } from './trend-file.ts';

type PlotModule = typeof import('../../src/calculators/trend/TrendPlot.tsx');

/** The most rows that are accepted. The budget is a second for all three together on a tablet four times slower. */
const rows = limitValue('trend-rows') - 1;
const slowdown = 4;

export const bench: Bench = {
  name: `A trend file of ${rows} rows, read, fitted and drawn`,
  run: async () => {
    const { TrendPlot } = await loadComponents<PlotModule>('/src/calculators/trend/TrendPlot.tsx');
    const file = trendFile(rows);
    const read = () => readTrendTable(cellsOf(file) ?? []);
    const table = read();
    const fit = () =>
      assessTrend({ table, correction: 'halving', machineClass: 'random-wound', ratedVoltage: missing });
    const assessment = fit();
    const draw = (one: TrendAssessment) => renderToString(h(TrendPlot, { assessment: one }));
    const times = {
      read: await milliseconds(read),
      fit: await milliseconds(fit),
      draw: await milliseconds(() => draw(assessment)),
    };
    return [
      { what: 'read', value: times.read, unit: 'ms' },
      { what: 'corrected, fitted and judged, by all methods', value: times.fit, unit: 'ms' },
      { what: 'drawn', value: times.draw, unit: 'ms' },
      { what: 'together', value: times.read + times.fit + times.draw, unit: 'ms', budget: 1000 / slowdown },
      { what: 'rows used', value: assessment.rows.length, unit: '', least: rows },
      { what: 'drawing with its table', value: draw(assessment).length, unit: 'B' },
    ];
  },
};
