import { type LimitId, limitRange } from '../../kernel/limits.ts';
import { voltageSpan } from './span-words.ts';

/** The applicable row of the published table, large enough to be read beside the tester. */
export function TableRow({ id }: { id: LimitId }) {
  const { from, to } = limitRange(id);
  return (
    <figure class="table-row">
      <p>{voltageSpan(from, to)} DC</p>
      <figcaption>The row of the published table. Its source stands below the verdict.</figcaption>
    </figure>
  );
}
