import type { DeadProof } from './dead-proofs.ts';

/** Each proof that the drive was dead: every point with its reading and time. */
export function DeadProofTables({ proofs, instrument }: { proofs: readonly DeadProof[]; instrument: string }) {
  return (
    <section>
      <h3>Proved dead</h3>
      <p class="report-with">Multimeter noted for the visit: {instrument}.</p>
      {proofs.map(({ id, title, when, points, rest }) => (
        <section key={id} class="report-measurement">
          <h4>
            {title}: {when}
          </h4>
          {points.length > 0 && (
            // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be within reach of the keyboard
            <section class="table-scroll" tabIndex={0} aria-label={`Points: ${title}, ${when}`}>
              <table class="report-readings">
                <thead>
                  <tr>
                    <th scope="col">Point</th>
                    <th scope="col">Reading</th>
                    <th scope="col">Below</th>
                    <th scope="col">Verdict</th>
                    <th scope="col">Time</th>
                  </tr>
                </thead>
                <tbody>
                  {points.map(({ id: point, ...row }) => (
                    <tr key={point}>
                      <th scope="row">{row.point}</th>
                      <td>{row.reading}</td>
                      <td>{row.limit}</td>
                      <td>{row.verdict}</td>
                      <td>{row.time}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </section>
          )}
          {rest.length > 0 && (
            <p>Measured too, and no higher than what stands here: the other points of {rest.join('; ')}.</p>
          )}
        </section>
      ))}
    </section>
  );
}
