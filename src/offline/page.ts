import { type FromPage, type FromWorker, heldPaths } from './messages.ts';

// On every page: registers the worker, and says when a newer version of the site waits. Nothing changes by itself.

const root = document.documentElement.dataset.base ?? '/';

if ('serviceWorker' in navigator && window.isSecureContext) {
  addEventListener('load', () => void begin());
}

async function begin(): Promise<void> {
  const workers = navigator.serviceWorker;
  const registration = await workers.register(`${root}sw.js`, { scope: root }).catch(() => undefined);
  if (registration === undefined) return;
  ask(registration.active, 'mend');
  if (registration.waiting) offer(registration);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      // Without a controller this is the first visit: nothing old is on the device.
      if (coming.state === 'installed' && workers.controller) offer(registration);
    });
  });
  // A tablet keeps a page open for days: it looks again when it is taken up.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void registration.update().catch(() => undefined);
  });
}

function ask(worker: ServiceWorker | null, message: FromPage): void {
  worker?.postMessage(message);
}

function offer(registration: ServiceWorkerRegistration): void {
  const notice = document.querySelector<HTMLElement>('[data-update-notice]');
  if (notice === null || !notice.hidden) return;
  const path = location.pathname.slice(root.length);
  const isHeld = heldPaths.some((held) => path.startsWith(held));
  notice.hidden = false;
  show(notice, isHeld ? 'later' : 'ready');
  if (isHeld) return;
  navigator.serviceWorker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
    show(notice, data === 'held' ? 'held' : 'ready');
  });
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  notice.querySelector('button')?.addEventListener('click', () => ask(registration.waiting, 'take-over'));
}

/** One of the notice's prepared texts. */
function show(notice: HTMLElement, state: 'ready' | 'later' | 'held'): void {
  for (const text of notice.querySelectorAll<HTMLElement>('[data-when]')) text.hidden = text.dataset.when !== state;
}
