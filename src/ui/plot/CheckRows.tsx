import type { CheckRow, CheckState } from './check-rows.ts';

interface Look {
  words: string;
  /** What the style of drawings calls it. */
  status: string;
  /** In a frame of 32 by 32, distinct without colour. */
  sign: string;
}

const looks: Record<CheckState, Look> = {
  passes: { words: 'passes', status: 'proven-good', sign: 'M7 17l6 7 12-15' },
  fails: { words: 'fails', status: 'proven-bad', sign: 'M8 8l16 16M24 8 8 24' },
  undecided: { words: 'undecided', status: 'undecided', sign: 'M11 12a5 5 0 1 1 7 5q-2 1-2 3M16 25v1' },
  'not-measured': { words: 'not measured', status: 'not-tested', sign: 'M9 16h14' },
};

const rowHeight = 46;

interface Props {
  /** What the ids of the drawing begin with. */
  name: string;
  title: string;
  rows: readonly CheckRow[];
  caption: string;
}

/** Each check of a calculator with what was found, drawn by word and sign. */
export function CheckRows({ name, title, rows, caption }: Props) {
  return (
    <figure class="live-figure">
      <svg
        class="live-drawing"
        viewBox={`0 0 360 ${rows.length * rowHeight}`}
        role="img"
        aria-labelledby={`${name}-checks-title ${name}-checks-text`}
      >
        <title id={`${name}-checks-title`}>{title}</title>
        <desc id={`${name}-checks-text`}>{rows.map((row) => `${row.name}: ${looks[row.state].words}.`).join(' ')}</desc>
        {rows.map((row, index) => {
          const { words, status, sign } = looks[row.state];
          return (
            <g key={row.id} data-part={row.id} data-status={status} transform={`translate(0 ${index * rowHeight})`}>
              <rect class="frame" x="2" y="2" width="356" height={rowHeight - 4} rx="3" />
              <rect class="switch" x="8" y="7" width="32" height="32" rx="3" />
              <path class="sign" d={sign} transform="translate(8 7)" />
              <text x="50" y="29" class="strong">
                {row.name}
              </text>
              <text x="350" y="29" text-anchor="end">
                {words}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}
