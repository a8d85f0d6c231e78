import { useMemo } from 'preact/hooks';
import { TrendPlot } from '../../calculators/trend/TrendPlot.tsx';
import { trendFindings } from '../../calculators/trend/words.ts';
import { verdictWords } from '../../kernel/form/verdict-words.ts';
import { millisecondsADay } from '../../kernel/reading/calendar-date.ts';
import { capital, sentenceOf } from '../../kernel/words/sentences.ts';
import { href } from '../../ui/href.ts';
import { questions } from '../../visit/steps/questions.ts';
import type { Exchange } from '../history/changes.ts';
import type { Earlier } from '../history/earlier.ts';
import { fallsOf } from '../history/falls.ts';
import { ofSamePart } from '../history/past.ts';
import { type InsulatedPart, insulatedParts, pointsOf } from '../history/points.ts';
import { seriesOf } from '../history/series.ts';
import { trendOf } from '../history/trend.ts';
import { fallText, insulatedNames } from '../words/falls.ts';
import { SeriesPlot } from './SeriesPlot.tsx';

interface Props {
  /** The newest first. */
  earlier: readonly Earlier[];
  exchanges: readonly Exchange[];
  /** Older visits whose readings are not read. */
  more: number;
}

/** The readings of an axis over the years: the trend of its insulation, then each step with its limits. */
export function AxisReadings({ earlier, exchanges, more }: Props) {
  const points = useMemo(() => earlier.flatMap(({ visit, sets }) => pointsOf(visit, sets)), [earlier]);
  const series = useMemo(() => seriesOf(earlier), [earlier]);
  if (series.length === 0) return null;
  const parts = insulatedParts.filter((part) => points.some((point) => point.part === part));
  return (
    <>
      <section aria-labelledby="insulation-over-years">
        <h2 id="insulation-over-years">Insulation over the years</h2>
        {parts.map((part) => (
          <PartTrend key={part} part={part} points={points} exchanges={exchanges} />
        ))}
      </section>
      <section aria-labelledby="readings">
        <h2 id="readings">Each reading</h2>
        {series.map((one) => (
          <SeriesPlot key={one.step} series={one} title={questions[one.step].title} />
        ))}
        {more > 0 && (
          <p class="hint">
            Readings of the newest {earlier.length} visits; {more} older ones are in their visits.
          </p>
        )}
      </section>
    </>
  );
}

type Points = ReturnType<typeof pointsOf>;

function PartTrend({
  part,
  points,
  exchanges,
}: {
  part: InsulatedPart;
  points: Points;
  exchanges: readonly Exchange[];
}) {
  const same = ofSamePart(points, part, exchanges).sort((a, b) => a.day - b.day);
  const newest = same[same.length - 1];
  // A cable has no winding whose temperature could be corrected.
  const trend = useMemo(
    () => (part === 'cable' ? undefined : trendOf(same, Date.now() / millisecondsADay)),
    [points, exchanges],
  );
  if (newest === undefined) return null;
  const falls = fallsOf(newest, same);
  return (
    <div class="axis-trend" data-verdict={trend?.verdict}>
      <h3>{capital(insulatedNames[part])}</h3>
      <ul class="findings">
        {falls.map((compared) => (
          <li key={compared.since} data-severity="caution">
            {fallText(compared)}
          </li>
        ))}
        {trend?.findings.map((finding) => (
          <li key={finding.code} data-severity={finding.severity}>
            {sentenceOf(trendFindings, finding)}
          </li>
        ))}
      </ul>
      {trend && (
        <>
          <p class="hint">
            As ageing, by the rule of the <a href={href('/calculators/trend/')}>trend over the years</a>:{' '}
            {verdictWords[trend.verdict]}. After a trip the reading itself counts.
          </p>
          {trend.rows.length > 1 && <TrendPlot assessment={trend} id={`trend-${part}`} />}
        </>
      )}
    </div>
  );
}
