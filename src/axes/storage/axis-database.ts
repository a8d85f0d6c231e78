import type { DBSchema } from 'idb';
import { openStores, type Stores } from '../../visit/storage/stores.ts';
import type { VisitHead, VisitReadings } from '../record/visit-digest.ts';

/** What the register needs of a visit. `order`: that of the visit's row when it was read. */
export interface HeadRow {
  id: string;
  order: number;
  head: VisitHead;
}

export interface AxisSchema extends DBSchema {
  /** Records of any version: read them with `readAxis`. */
  axes: { key: string; value: { id: string; record: unknown } };
  /** Made from the visits, and made again if they are lost: `heads` for the list, `readings` for one axis. */
  heads: { key: string; value: HeadRow };
  readings: { key: string; value: VisitReadings };
}

export type AxisDatabase = Stores<AxisSchema>;

const databaseVersion = 1;

/**
 * The register's own database: an edition that knows no register opens the visits as before, and a change of layout
 * here waits for no tab that shows a visit.
 */
export function axisDatabase(name = 'overcurrent-fieldbook-axes', version = databaseVersion): AxisDatabase {
  return openStores<AxisSchema>({
    name,
    version,
    stores: ['axes', 'heads', 'readings'],
    upgrade(db, from) {
      if (from < 1) {
        for (const store of ['axes', 'heads', 'readings'] as const) db.createObjectStore(store, { keyPath: 'id' });
      }
    },
  });
}
