import { href } from '../../ui/href.ts';
import { visitHash } from '../../visit/app/route.ts';
import type { Axis } from '../history/register.ts';
import { axisTitle } from '../words/axis.ts';

const rowsShown = 60;

/** The visits to an axis with what each decided. */
export function VisitTable({ axis }: { axis: Axis }) {
  const shown = axis.visits.slice(0, rowsShown);
  return (
    <section aria-labelledby="visits">
      <h2 id="visits">Visits</h2>
      {shown.length === 0 && <p>No visit yet.</p>}
      {shown.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be within reach of the keyboard
        <section class="table-scroll" tabIndex={0} aria-label="Visits and decisions">
          <table>
            <thead>
              <tr>
                <th scope="col">Day</th>
                <th scope="col">Decision at the time</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((visit) => (
                <tr key={visit.id}>
                  <th scope="row">
                    <a href={href(`/visit/${visitHash(visit.id)}`)}>{visit.at.slice(0, 10)}</a>
                  </th>
                  <td>
                    {visit.baseline && <b>Baseline. </b>}
                    {visit.decision?.headline ?? (visit.baseline ? '' : 'No decision.')}
                    {axisTitle(visit) !== axisTitle(axis.names) && ` Noted as ${axisTitle(visit)}.`}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {axis.visits.length > shown.length && (
        <p class="hint">
          The newest {shown.length} of {axis.visits.length} visits.
        </p>
      )}
    </section>
  );
}
