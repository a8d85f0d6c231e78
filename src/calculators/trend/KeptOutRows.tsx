import { keptOutReason } from './row-words.ts';
import type { KeptOutRow } from './rule/input.ts';

/** As many as a person would read; the others are counted by reason. */
const mostListed = 100;

/** Every unused row with its reason, so that no row is left out silently. */
export function KeptOutRows({ rows }: { rows: readonly KeptOutRow[] }) {
  if (rows.length === 0) return null;
  const more = new Map<string, number>();
  for (const row of rows.slice(mostListed)) {
    const reason = keptOutReason(row);
    more.set(reason, (more.get(reason) ?? 0) + 1);
  }
  return (
    <section class="kept-out" aria-label="Rows kept out">
      <h3>Rows kept out: {rows.length}</h3>
      <div class="table-scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">What stands there</th>
              <th scope="col">Why, and what to do</th>
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, mostListed).map((row) => (
              <tr key={row.line}>
                <th scope="row">{row.line}</th>
                <td>{row.cells.join(' | ')}</td>
                <td>{keptOutReason(row)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {[...more].map(([reason, count]) => (
        <p key={reason}>
          And {count} more: {reason}
        </p>
      ))}
    </section>
  );
}
