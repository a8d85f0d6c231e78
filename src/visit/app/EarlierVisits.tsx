import type { EvaluatedVisit } from '../evaluate.ts';
import { questions } from '../steps/questions.ts';
import { useBackground } from './background.ts';

/** What earlier visits to this axis say about this one: with the decision, on the screen and in the report. */
export function EarlierVisits({ evaluated }: { evaluated: EvaluatedVisit }) {
  const background = useBackground();
  if (background === undefined) return null;
  const { asks, axis } = background;
  const against = background.against(evaluated);
  if (against.length === 0 && asks === undefined) return null;
  return (
    <section class="earlier-visits">
      <h3>Compared with earlier visits</h3>
      <ul class="findings">
        {against.map(({ step, text }) => (
          <li key={step + text} data-severity="caution">
            <b>{questions[step].title}:</b> {text}
          </li>
        ))}
        {asks && (
          <li data-severity="caution">
            {asks.text} <a href={asks.href}>{asks.link}</a>.
          </li>
        )}
      </ul>
      <p class="on-screen">
        <a href={axis.href}>The history of {axis.title}</a>
      </p>
    </section>
  );
}
