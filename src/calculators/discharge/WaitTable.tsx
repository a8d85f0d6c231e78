import { limit, limitValue } from '../../kernel/limits.ts';
import { formatRounded, formatSeconds } from '../../kernel/reading/format-reading.ts';
import { href } from '../../ui/href.ts';
import type { Wait } from './rule/wait.ts';
import { onlyTheMeter, waitNames } from './wait-words.ts';

/** The waits to the published limits, with the words that must be beside each number. */
export function WaitTable({ waits, fromReading }: { waits: readonly Wait[]; fromReading: boolean }) {
  const sinceReading = waits.some(({ afterReading }) => afterReading !== undefined);
  return (
    <>
      {/* Outside the box that scrolls: on a phone a caption in the table would scroll out of sight. */}
      <p class="wait-caution">{onlyTheMeter}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be within reach of the keyboard */}
      <section class="table-scroll" tabIndex={0} aria-label="Computed waiting times">
        <table>
          <caption>Computed waiting times, at the longest</caption>
          <thead>
            <tr>
              <th scope="col">Down to</th>
              <th scope="col">{fromReading ? 'After your first reading' : 'After the cut'}</th>
              {sinceReading && <th scope="col">After your second reading</th>}
              <th scope="col">Published time</th>
            </tr>
          </thead>
          <tbody>
            {waits.map(({ limit: id, volts, seconds, afterReading, within }) => (
              <tr key={id}>
                <th scope="row">
                  <a href={href(`/tables/#${id}`)}>{reached(id, volts)}</a>
                </th>
                <td>{formatSeconds(seconds.hi)}</td>
                {sinceReading && <td>{afterReading === undefined ? '' : formatSeconds(afterReading)}</td>}
                <td>{within ? formatSeconds(limitValue(within)) : 'none'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

function reached(id: Wait['limit'], volts: number): string {
  const about = waitNames[id] ?? id.replaceAll('-', ' ');
  if (limit(id).unit === 'V') return `${formatRounded(volts, 'V')} (${about})`;
  return `${formatRounded(limitValue(id), 'C')}, ${formatRounded(volts, 'V')} here (${about})`;
}
