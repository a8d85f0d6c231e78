import type { LimitLine } from '../../kernel/words/limit-lines.ts';
import { href } from '../href.ts';

/** The limits behind a verdict, each with its figure and status, linked to the tables. */
export function LimitsUsed({ lines }: { lines: readonly LimitLine[] }) {
  if (lines.length === 0) return null;
  return (
    <div class="limits-used">
      <h4>Limits used</h4>
      <ul>
        {lines.map(({ id, label, figure, standing }) => (
          <li key={id}>
            <a href={href(`/tables/#${id}`)}>{label}</a>: <b>{figure}</b> ({standing})
          </li>
        ))}
      </ul>
    </div>
  );
}
