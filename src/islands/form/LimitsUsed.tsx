import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { LimitId } from '../../calc/index.ts';
import { href } from '../../components/href.ts';

type List = ComponentType<{ ids: readonly LimitId[] }>;

/** Kept once it has come: a verdict that returns after a slip of the unit shows its limits at once. */
let loaded: List | undefined;

/** The limits that a verdict rests on. Their words come with the first verdict; until then the links stand alone. */
export function LimitsUsed({ ids }: { ids: readonly LimitId[] }) {
  const [List, setList] = useState<List | undefined>(() => loaded);
  useEffect(() => {
    if (loaded !== undefined) return;
    import('./LimitList.tsx')
      .then(({ LimitList }) => {
        loaded = LimitList;
        setList(() => LimitList);
      })
      .catch(() => undefined);
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
