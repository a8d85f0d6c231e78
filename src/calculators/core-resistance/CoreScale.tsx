import type { ReadForm } from '../../kernel/form/read-form.ts';
import { formatQuantity, formatReading } from '../../kernel/reading/format-reading.ts';
import { figureOf } from '../../kernel/reading/reading.ts';
import { coreInput } from './form.ts';
import type { CoreInput, CoreMarks } from './rule/input.ts';
import { twoDigits } from './words.ts';

const [left, right, line] = [14, 346, 52];

const shown = (ohms: number) => formatQuantity(twoDigits(ohms), 'Ω');

/** Of a form as it was judged. */
export function JudgedCoreScale({ read, marks }: { read: ReadForm; marks: CoreMarks }) {
  return <CoreScale marks={marks} input={coreInput(read)} />;
}

/** The reading beside what copper alone, and copper with contacts, may have. */
export function CoreScale({ marks, input }: { marks: CoreMarks; input: CoreInput }) {
  const figure = figureOf(input.reading);
  const x = (ohms: number) => left + Math.min(1, ohms / (marks.beyond * 1.25)) * (right - left);
  const rows: [string, number][] = [
    ['copper', marks.table],
    ['passes', marks.most],
    ['fails', marks.beyond],
  ];
  const reading = formatReading(input.reading);
  return (
    <figure class="live-figure">
      <svg
        class="live-drawing"
        viewBox="0 0 360 150"
        role="img"
        aria-labelledby="core-resistance-drawing-title core-resistance-drawing-text"
      >
        <title id="core-resistance-drawing-title">The reading beside what is expected</title>
        <desc id="core-resistance-drawing-text">
          {`Copper alone up to ${shown(marks.table)}; passes up to ${shown(marks.most)}; fails above ${shown(marks.beyond)}.`}
          {figure !== undefined && ` Read: ${reading}.`}
        </desc>
        <rect
          class="undecided-area"
          x={x(marks.most)}
          y={line - 14}
          width={x(marks.beyond) - x(marks.most)}
          height="28"
        />
        <path class="wire" d={`M${left} ${line}H${right}`} />
        {rows.map(([word, ohms], index) => (
          <g key={word}>
            <path class="limit-line" d={`M${x(ohms)} ${line - 14}V${84 + index * 22}`} />
            <text x={Math.min(x(ohms) + 5, 230)} y={88 + index * 22}>
              {word} {shown(ohms)}
            </text>
          </g>
        ))}
        {figure !== undefined && (
          <>
            <circle class="mark" cx={x(figure)} cy={line} r="8" />
            <text class="strong" x={Math.min(Math.max(x(figure), 50), 310)} y="24" text-anchor="middle">
              {reading}
            </text>
          </>
        )}
      </svg>
      <figcaption>
        Between “passes” and “fails” nothing is decided. A reading farther off is drawn at the end.
      </figcaption>
    </figure>
  );
}
