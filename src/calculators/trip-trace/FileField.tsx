import { limitValue } from '../../kernel/limits.ts';
import { readKeptTrace } from './kept-trace.ts';
import { fileProblems, lineRemarks } from './read/file-problems.ts';
import type { OpenedFile } from './trace-session.ts';
import type { TraceFileState } from './use-trace-file.ts';

/** A comma between the groups would be a decimal mark to some. */
const mostRows = limitValue('trace-rows').toLocaleString('en').replace(',', '\u202f');

interface Props {
  state: TraceFileState;
  /** What is kept of a file, as it stands in the form. */
  kept: string;
}

/** Chooses the file, and says how far its reading has come, why it was refused, and what was left out of it. */
export function FileField({ state: { file, progress, refused, open }, kept }: Props) {
  const said = readKeptTrace(kept);
  return (
    <div class={refused ? 'field is-bad' : 'field'}>
      <label for="trip-trace-file">Recording (CSV)</label>
      <p class="hint" id="trip-trace-file-hint">
        Any separator and decimal mark, up to {mostRows} rows. It stays on this device, and nothing of it is sent.
      </p>
      <input
        id="trip-trace-file"
        type="file"
        accept=".csv,.tsv,.txt,.dat,.asc,text/csv,text/plain,text/tab-separated-values"
        aria-describedby="trip-trace-file-hint trip-trace-file-error"
        onChange={(event) => {
          const input = event.currentTarget;
          const chosen = input.files?.[0];
          if (chosen) open(chosen);
          // Cleared, so that the same file can be opened again after a correction.
          input.value = '';
        }}
      />
      <p class="echo" role="status">
        {progress && `Reading: ${Math.round(progress.share * 100)} %, ${progress.rows} rows`}
        {!progress && file && `= ${file.name}: ${file.rows} rows, ${file.columns.length} columns`}
      </p>
      <p class="error" id="trip-trace-file-error" role="alert">
        {refused && sentenceFor(refused)}
      </p>
      {file && (
        <LeftOut
          file={file}
          withoutCurrent={said?.remarks.rowsWithoutCurrent ?? 0}
          backAt={said?.remarks.timeGoesBackAt}
        />
      )}
      {!file && said && (
        <p class="hint">
          From {said.figures.file} the figures and the curves are kept, not the samples: they would be too many. To
          change columns, units, moment or pole pairs, open the file again.
        </p>
      )}
    </div>
  );
}

function sentenceFor({ problem, line }: NonNullable<TraceFileState['refused']>): string {
  const why =
    problem === 'unreadable'
      ? 'The file can’t be read. Copy it to this device first, then choose it again.'
      : fileProblems[problem];
  return `${why}${line === undefined ? '' : ` (Line ${line}.)`}`;
}

/** Nothing of a file is left out without a word. */
function LeftOut({
  file,
  withoutCurrent,
  backAt,
}: {
  file: OpenedFile;
  withoutCurrent: number;
  backAt: number | undefined;
}) {
  const { remarks, remarked, comments } = file;
  if (remarked + comments + withoutCurrent === 0 && backAt === undefined) return null;
  return (
    <details class="more">
      <summary>
        Not taken: {remarked + withoutCurrent} rows{comments > 0 && `, ${comments} comments`}
      </summary>
      <ul>
        {remarks.map(({ line, remark }) => (
          <li key={line}>
            Line {line} {lineRemarks[remark]}.
          </li>
        ))}
        {remarked > remarks.length && <li>{remarked - remarks.length} more lines.</li>}
        {withoutCurrent > 0 && <li>{withoutCurrent} rows have no time or lack a current.</li>}
        {backAt !== undefined && <li>At row {backAt} the time goes back: only what stands before it was taken.</li>}
      </ul>
    </details>
  );
}
