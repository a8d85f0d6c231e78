import { type LimitId, limit } from '../../kernel/limits.ts';
import { formatLimit } from '../../kernel/words/format-limit.ts';
import { limitStatus } from '../../kernel/words/limit-status.ts';
import { href } from '../href.ts';

/** The limits behind a verdict, each with its figure and status, linked to the tables. */
export function LimitsUsed({ ids }: { ids: readonly LimitId[] }) {
  if (ids.length === 0) return null;
  return (
    <div class="limits-used">
      <h4>Limits used</h4>
      <ul>
        {ids.map((id) => {
          const data = limit(id);
          const { words } = limitStatus[data.status as keyof typeof limitStatus];
          return (
            <li key={id}>
              <a href={href(`/tables/#${id}`)}>{data.label}</a>: <b>{formatLimit(data)}</b> ({words.toLowerCase()}
              {data.clause && `, ${data.clause}`}
              {data.recalled && ', from memory'})
            </li>
          );
        })}
      </ul>
    </div>
  );
}
