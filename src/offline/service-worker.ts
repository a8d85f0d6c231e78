/// <reference lib="webworker" />
import { PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { registerRoute, setCatchHandler, setDefaultHandler } from 'workbox-routing';
import { type FromPage, type FromWorker, heldPaths } from './messages.ts';
import { mendCache } from './refill-cache.ts';

// The whole site is fetched once and then served from the device. A new version waits until no page of the old one is
// open, or until the person asks for it: pages, scripts and search index always belong together.

declare const self: ServiceWorkerGlobalScope & {
  __WB_MANIFEST: { url: string; revision: string | null; integrity: string }[];
};

const controller = new PrecacheController();
// With integrity, fetching a file of another version fails, so the old version stays complete.
controller.addToCacheList(self.__WB_MANIFEST);

self.addEventListener('install', (event) => {
  event.waitUntil(controller.install(event));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(controller.activate(event).then(() => self.clients.claim()));
});

// A link may carry a case or a filled form after the question mark; the page is the same.
registerRoute(new PrecacheRoute(controller, { ignoreURLParametersMatching: [/./], directoryIndex: 'index.html' }));

// Unknown to this version: another page of the host, or a removed page.
setDefaultHandler(({ request }) => fetch(request));

// Evicted from the cache, and the server has another version by now: serve that rather than nothing.
setCatchHandler(async ({ request }) => {
  const answer = await fetch(request).catch(() => undefined);
  if (answer !== undefined) return answer;
  const page = request.mode === 'navigate' ? await controller.matchPrecache('404.html') : undefined;
  return page ?? Response.error();
});

self.addEventListener('message', (event) => {
  const message = event.data as FromPage;
  if (message === 'mend') event.waitUntil(mendCache(controller));
  if (message === 'take-over') event.waitUntil(takeOver(event.source as WindowClient | null));
});

/** Replaces the old version, unless an open page would be interrupted. */
async function takeOver(asker: WindowClient | null): Promise<void> {
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const held = pages.some(({ url }) => heldPaths.some((path) => url.startsWith(self.registration.scope + path)));
  const answer: FromWorker = held ? 'held' : 'taking-over';
  asker?.postMessage(answer);
  if (!held) await self.skipWaiting();
}
