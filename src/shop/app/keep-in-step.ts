import { isFolder, mayUse, sharedFolder } from '../storage/shared-folder.ts';
import { shopDatabase } from '../storage/shop-database.ts';

/** How often the folder is looked at while the visits are open, in milliseconds. */
const every = 60_000;

let running = false;

/** One exchange, if a folder is chosen and the browser still allows it. What a person must know stands in `place`. */
async function exchangeQuietly(place: HTMLElement): Promise<void> {
  if (running || document.visibilityState !== 'visible') return;
  running = true;
  try {
    const folder = await shopDatabase().folder();
    if (!isFolder(folder)) return;
    const asks = !(await mayUse(folder, false));
    place.hidden = !asks;
    if (asks) return;
    // Loaded only on a device that shares a folder.
    const [{ runExchange }, { exchangeNotices }] = await Promise.all([
      import('./run-exchange.ts'),
      import('../words.ts'),
    ]);
    const { report, after } = await runExchange(sharedFolder(folder));
    const notices = exchangeNotices({ ...report, problems: [], busy: 0 }, after.visits);
    if (notices.length > 0) say(place, notices);
  } catch {
    // The page of the shop says what is wrong; here it would only disturb.
  } finally {
    running = false;
  }
}

function say(place: HTMLElement, notices: readonly string[]): void {
  const list = document.createElement('ul');
  for (const notice of notices) {
    const item = document.createElement('li');
    item.textContent = notice;
    list.append(item);
  }
  place.querySelector('ul')?.remove();
  place.append(list);
  place.hidden = false;
}

const place = document.querySelector<HTMLElement>('[data-shop-notice]');
if (place !== null && 'showDirectoryPicker' in globalThis) {
  void exchangeQuietly(place);
  setInterval(() => void exchangeQuietly(place), every);
  document.addEventListener('visibilitychange', () => void exchangeQuietly(place));
}
