import { limitStatus } from '../../kernel/words/limit-status.ts';
import type { LimitSnapshot } from '../record/snapshot-schema.ts';
import type { MeasuredReport } from './measured.ts';

/** One measurement: verdict, readings, findings, and the limits with values and sources. */
export function ReportMeasurement({ report }: { report: MeasuredReport }) {
  const { title, verdict, readings, time, instrument, sentences, limits } = report;
  return (
    <div class="report-measurement">
      <h3>
        {title}: {verdict}
      </h3>
      <p class="report-with">
        {time && `${time}, `}
        {instrument}
      </p>
      <p class="report-readings">
        {readings.map(({ name, value, isReading }) => (
          <span key={name}>
            {name} {isReading ? <b>{value}</b> : <em>{value}</em>}
          </span>
        ))}
      </p>
      <ul>
        {sentences.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {limits.length > 0 && <p class="report-limits">Limits: {limits.map(inWords).join('; ')}.</p>}
    </div>
  );
}

function inWords({ label, value, status, source }: LimitSnapshot): string {
  const words = limitStatus[status as keyof typeof limitStatus]?.words.toLowerCase() ?? status;
  return `${label} ${value} (${[words, source].filter(Boolean).join(', ')})`;
}
