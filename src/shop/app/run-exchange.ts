import { axisStore } from '../../axes/storage/axis-store.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { database } from '../../visit/storage/database.ts';
import { visitStore } from '../../visit/storage/visit-store.ts';
import { writeShop } from '../file/shop-file.ts';
import { shopFormatAt } from '../file/shop-format.ts';
import { type DeviceState, exchange } from '../merge/exchange.ts';
import type { Shared } from '../merge/merge-visit.ts';
import { type Device, type Folder, type SyncReport, syncFolder, withStoredPictures } from '../merge/sync.ts';
import { shopDatabase } from '../storage/shop-database.ts';
import { thisDevice } from '../storage/this-device.ts';

const now = () => isoTime(new Date());

/** Runs `work` while no other tab exchanges, where the browser has locks for that. */
async function alone<T>(work: () => Promise<T>): Promise<T> {
  const locks = (navigator as { locks?: LockManager }).locks;
  return locks === undefined ? work() : locks.request('fieldbook-shop', work);
}

/** Gives `work` this device, while no other tab exchanges. */
function withDevice<T>(work: (device: Device) => Promise<T>): Promise<T> {
  return alone(async () => {
    const visits = database();
    const store = visitStore({ database: visits });
    const register = axisStore();
    try {
      return await work(thisDevice({ visits, store, register, shop: shopDatabase() }));
    } finally {
      store.close();
      register.close();
    }
  });
}

/** One exchange of this device with a folder or chosen files, and the visits that are here after it. */
export function runExchange(folder: Folder): Promise<{ report: SyncReport; after: DeviceState }> {
  return withDevice(async (device) => {
    const report = await syncFolder(device, folder, shopFormatAt(now));
    return { report, after: await device.read() };
  });
}

const nothing: Folder = { files: () => Promise.resolve([]), write: () => Promise.resolve() };

/** Everything of this device as the text of one file. */
export function exportShop(): Promise<string> {
  return withDevice(async (device) => {
    await syncFolder(device, nothing, shopFormatAt(now));
    const { states } = exchange(await device.read(), []);
    const whole: Shared[] = [];
    for (const state of states.values()) whole.push(await withStoredPictures(device, state));
    return writeShop(whole, await device.axes(), now());
  });
}

/** The visits of this device. */
export const visitsHere = (): Promise<DeviceState['visits']> =>
  withDevice(async (device) => (await device.read()).visits);
