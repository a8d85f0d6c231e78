import { type LimitId, limit } from '../../calc/index.ts';
import { formatLimit } from '../../components/format-limit.ts';
import { href } from '../../components/href.ts';
import { limitStatus } from '../../components/limit-status.ts';
import { limitWords } from './limit-words.ts';

/** Each limit with its figure and status, linked to the tables. */
export function LimitList({ ids }: { ids: readonly LimitId[] }) {
  return (
    <ul>
      {ids.map((id) => {
        const { label, status, clause, recalled } = limitWords(id);
        const { words } = limitStatus[status as keyof typeof limitStatus];
        return (
          <li key={id}>
            <a href={href(`/tables/#${id}`)}>{label}</a>: <b>{formatLimit(limit(id))}</b> ({words.toLowerCase()}
            {clause && `, ${clause}`}
            {recalled && ', from memory'})
          </li>
        );
      })}
    </ul>
  );
}
