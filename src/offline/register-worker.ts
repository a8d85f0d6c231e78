import type { FromPage } from './messages.ts';

// On every page: registers the worker and announces a waiting version. Nothing changes without the person.

const root = document.documentElement.dataset.base ?? '/';

if ('serviceWorker' in navigator && window.isSecureContext) {
  addEventListener('load', () => void begin());
}

async function begin(): Promise<void> {
  const workers = navigator.serviceWorker;
  const registration = await workers.register(`${root}sw.js`, { scope: root }).catch(() => undefined);
  if (registration === undefined) return;
  const mend: FromPage = 'mend';
  registration.active?.postMessage(mend);
  if (registration.waiting) void offer(registration);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      // Without a controller this is the first visit: nothing old is on the device.
      if (coming.state === 'installed' && workers.controller) void offer(registration);
    });
  });
  // A tablet keeps a page open for days, so check again when the page is shown.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void registration.update().catch(() => undefined);
  });
}

/** Loaded only when needed: pages are opened far more often than versions change. */
async function offer(registration: ServiceWorkerRegistration): Promise<void> {
  const { offerUpdate } = await import('./update-notice.ts');
  offerUpdate(registration, location.pathname.slice(root.length));
}
