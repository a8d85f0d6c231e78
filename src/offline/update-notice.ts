import { type FromPage, type FromWorker, heldPaths } from './messages.ts';

const ready =
  'A newer version of the fieldbook is on this device. Change over when you have a moment: open pages load again. ';
const later =
  'A newer version of the fieldbook is on this device. It waits until you leave this page; nothing here is interrupted.';
const changing = 'Changing over. The open pages load again by themselves; this may take half a minute. ';
const held =
  'A visit or a practice case is open in another tab. Close it first; until then you keep the version that you have.';

/**
 * Announces a waiting version and offers to change over to it; on a page that must not be interrupted it only announces
 * it. `path` of the page, below the site's root.
 */
export function offerUpdate(registration: ServiceWorkerRegistration, path: string): void {
  const notice = document.querySelector<HTMLElement>('[data-update-notice]');
  if (notice === null || !notice.hidden) return;
  const show = (...content: (string | Node)[]) => {
    const text = document.createElement('p');
    text.append(...content);
    notice.replaceChildren(text);
  };
  notice.hidden = false;
  if (heldPaths.some((start) => path.startsWith(start))) {
    show(later);
    return;
  }
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'Change over now';
  const takeOver: FromPage = 'take-over';
  button.addEventListener('click', () => registration.waiting?.postMessage(takeOver));
  show(ready, button);
  navigator.serviceWorker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
    if (data === 'held') show(held);
    else show(changing, button);
  });
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
}
