import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { LimitId } from '../../calc/index.ts';
import { href } from '../../components/href.ts';

type List = ComponentType<{ ids: readonly LimitId[] }>;

/** The limits that a verdict rests on. Their words come with the first verdict; until then the links stand alone. */
export function LimitsUsed({ ids }: { ids: readonly LimitId[] }) {
  const [List, setList] = useState<List>();
  useEffect(() => {
    void import('./LimitList.tsx').then(({ LimitList }) => setList(() => LimitList)).catch(() => undefined);
  }, []);
  if (ids.length === 0) return null;
  return (
    <div class="limits-used">
      <h4>Limits used</h4>
      {List ? (
        <List ids={ids} />
      ) : (
        <ul>
          {ids.map((id) => (
            <li key={id}>
              <a href={href(`/tables/#${id}`)}>{id.replaceAll('-', ' ')}</a>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
