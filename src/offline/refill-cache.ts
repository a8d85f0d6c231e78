/// <reference lib="webworker" />
import type { PrecacheController } from 'workbox-precaching';

/**
 * Fetches again what the browser has evicted, if the server still has the same files; a file of another version fails
 * its integrity check and is not stored.
 */
export async function mendCache(controller: PrecacheController): Promise<void> {
  const cache = await caches.open(controller.strategy.cacheName);
  const held = new Set((await cache.keys()).map(({ url }) => url));
  for (const [url, key] of controller.getURLsToCacheKeys()) {
    if (held.has(new URL(key, location.href).href)) continue;
    const integrity = controller.getIntegrityForCacheKey(key);
    const request = new Request(url, { ...(integrity && { integrity }), cache: 'reload', credentials: 'same-origin' });
    const response = await fetch(request).catch(() => undefined);
    if (response?.ok) await cache.put(key, response);
  }
}
