import { limitStatus } from '../../kernel/words/limit-status.ts';
import type { LimitSnapshot } from '../record/snapshot-schema.ts';
import type { MeasuredReport } from './measured.ts';
import { limitLetter } from './reading-rows.ts';

/** One measurement: verdict, a row for each reading, findings, and the limits with values and sources. */
export function ReadingsTable({ report }: { report: MeasuredReport }) {
  const { title, verdict, headline, rows, circumstances, instrument, sentences, limits } = report;
  return (
    <section class="report-measurement">
      <h4>
        {title}: {verdict}
        {headline && `. ${headline}`}
      </h4>
      {rows.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be within reach of the keyboard
        <section class="table-scroll" tabIndex={0} aria-label={`Readings: ${title}`}>
          <table class="report-readings">
            <thead>
              <tr>
                <th scope="col">Terminals</th>
                <th scope="col">Reading</th>
                <th scope="col">Limit</th>
                <th scope="col">Verdict</th>
                <th scope="col">Time</th>
                <th scope="col">Instrument of the step</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row, index) => (
                <tr key={row.id} data-verdict={row.verdict}>
                  <th scope="row">{row.terminals}</th>
                  <td>{row.reading}</td>
                  <td>{row.limit}</td>
                  <td>{row.verdict}</td>
                  <td>{row.time}</td>
                  {index === 0 && <td rowSpan={rows.length}>{instrument}</td>}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {circumstances.length > 0 && (
        <p class="report-with">
          {circumstances.map(({ name, text }) => `${name.replace(/\?$/, '')}: ${text}`).join('; ')}.
        </p>
      )}
      <ul>
        {sentences.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {limits.length > 0 && <p class="report-limits">Limits: {limits.map(inWords).join('; ')}.</p>}
    </section>
  );
}

function inWords({ label, value, status, source }: LimitSnapshot, index: number): string {
  const words = limitStatus[status as keyof typeof limitStatus]?.words.toLowerCase() ?? status;
  return `[${limitLetter(index)}] ${label} ${value} (${[words, source].filter(Boolean).join(', ')})`;
}
