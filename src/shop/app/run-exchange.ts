import { isoTime } from '../../kernel/time/iso-time.ts';
import { database } from '../../visit/storage/database.ts';
import { visitStore } from '../../visit/storage/visit-store.ts';
import { shopFormatAt } from '../file/shop-format.ts';
import type { DeviceState } from '../merge/exchange.ts';
import { type Folder, type SyncReport, syncFolder } from '../merge/sync.ts';
import { shopDatabase } from '../storage/shop-database.ts';
import { thisDevice } from '../storage/this-device.ts';

const now = () => isoTime(new Date());

/** Runs `work` while no other tab exchanges, where the browser has locks for that. */
async function alone<T>(work: () => Promise<T>): Promise<T> {
  const locks = (navigator as { locks?: LockManager }).locks;
  return locks === undefined ? work() : locks.request('fieldbook-shop', work);
}

/** One exchange of this device with a folder or chosen files, and the visits that are here after it. */
export function runExchange(folder: Folder): Promise<{ report: SyncReport; after: DeviceState }> {
  return alone(async () => {
    const visits = database();
    const store = visitStore({ database: visits });
    try {
      const device = thisDevice({ visits, store, shop: shopDatabase() });
      const report = await syncFolder(device, folder, shopFormatAt(now));
      return { report, after: await device.read() };
    } finally {
      store.close();
    }
  });
}
