import type { SearchPanel } from './search-panel.ts';

/** All that every page carries of the search: the rest is fetched when somebody turns to the box. */
export function startSearchBox(form: HTMLFormElement): void {
  const input = form.querySelector('input');
  let panel: Promise<SearchPanel> | undefined;

  function load(): Promise<SearchPanel> {
    if (!panel) {
      // Engine and index are fetched beside the script that shows what they find.
      const worker = new Worker(new URL('./search-worker.ts', import.meta.url));
      panel = import('./search-panel.ts').then(({ startPanel }) => startPanel(form, worker));
      panel.then(
        () => form.removeAttribute('data-failed'),
        () => {
          worker.terminate();
          panel = undefined;
          form.dataset.failed = '';
        },
      );
    }
    return panel;
  }

  const fetchAll = () => void load().catch(() => undefined);
  input?.addEventListener('focus', fetchAll);
  // Comes a moment before the focus.
  input?.addEventListener('pointerdown', fetchAll);
  onceStored(
    () =>
      void load().then(
        (shown) => shown.readyIndex(),
        () => undefined,
      ),
  );
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    try {
      (await load()).goToResults();
    } catch {
      location.assign(form.action);
    }
  });
  document.addEventListener('keydown', (event) => {
    const { key, ctrlKey, metaKey, altKey, target } = event;
    if (key !== '/' || ctrlKey || metaKey || altKey || isTyping(target)) return;
    event.preventDefault();
    input?.focus();
  });
  form.dataset.ready = '';
}

/**
 * Milliseconds on a page until its search is readied. Whoever passes through needs none; and where a page goes while its
 * search still fetches, Chromium holds the next change of version back for half a minute.
 */
const stay = 600;

/**
 * Where all files lie on the device the search is readied while nothing else happens: it costs no network then, and the
 * first answer needs no wait.
 */
function onceStored(ready: () => void): void {
  const workers = navigator.serviceWorker;
  const soon = () => setTimeout(() => (window.requestIdleCallback ?? setTimeout)(ready), stay);
  if (workers?.controller) soon();
  else workers?.addEventListener('controllerchange', soon, { once: true });
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && (target.isContentEditable || target.matches('input, textarea, select'));
}
