import { formatRounded } from '../../calc/index.ts';
import type { PlotData } from './plot-data.ts';

/** The plot's limits as text. */
export function LimitTable({ data }: { data: PlotData }) {
  const rows = data.curve.filter(({ temperature }) => temperature % 10 === 0);
  return (
    <details class="more">
      <summary>The limits as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Winding</th>
            <th scope="col">Go from</th>
            <th scope="col">No-go below</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ temperature, goFrom, noGoBelow }) => (
            <tr key={temperature}>
              <th scope="row">{formatRounded(temperature, '°C')}</th>
              <td>{formatRounded(goFrom, 'Ω')}</td>
              <td>{formatRounded(noGoBelow, 'Ω')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
