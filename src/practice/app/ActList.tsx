import { Fragment } from 'preact';
import { href } from '../../ui/href.ts';
import type { Entry } from '../case/case-run.ts';
import { actionText, resultText } from '../words/acts.ts';
import { benchTexts } from '../words/bench.ts';

const calculators = [
  { path: 'bridge', name: 'bridge' },
  { path: 'insulation', name: 'insulation' },
  { path: 'isolation', name: 'cable or motor' },
  { path: 'winding', name: 'windings' },
];

/** All acts and what they showed: the person's own notes. */
export function ActList({ entries }: { entries: readonly Entry[] }) {
  return (
    <section aria-labelledby="acts-done">
      <h2 id="acts-done" tabIndex={-1}>
        What you did
      </h2>
      {entries.length === 0 && <p>Nothing yet.</p>}
      <ol class="acts-done">
        {entries.map((entry, position) => (
          <li key={String(position)}>
            {actionText(entry.action)}. <strong>{resultText(entry.result)}</strong>
          </li>
        ))}
      </ol>
      <p>
        {benchTexts.judgeWith}{' '}
        {calculators.map(({ path, name }, position) => (
          <Fragment key={path}>
            {position > 0 && ', '}
            <a href={href(`/calculators/${path}/`)} target="_blank" rel="noopener">
              {name}
            </a>
          </Fragment>
        ))}
        .
      </p>
    </section>
  );
}
