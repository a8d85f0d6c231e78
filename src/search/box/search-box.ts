import type { SearchPanel } from './search-panel.ts';

/** Milliseconds on a page until the search is loaded from the device. */
const stay = 600;

/** The only search script that every page loads; the rest is fetched when somebody uses the box. */
export function startSearchBox(form: HTMLFormElement): void {
  const input = form.querySelector('input');
  let panel: Promise<SearchPanel> | undefined;

  function load(): Promise<SearchPanel> {
    if (!panel) {
      panel = import('./search-panel.ts').then(({ startPanel }) => startPanel(form));
      panel.then(
        () => form.removeAttribute('data-failed'),
        () => {
          panel = undefined;
          form.dataset.failed = '';
        },
      );
    }
    return panel;
  }

  const fetchAll = () => void load().catch(() => undefined);
  input?.addEventListener('focus', fetchAll);
  // Fires a moment before the focus.
  input?.addEventListener('pointerdown', fetchAll);
  // Needs no network if all files are on the device. The delay spares pages that people leave at once.
  if (navigator.serviceWorker?.controller) setTimeout(() => (window.requestIdleCallback ?? setTimeout)(fetchAll), stay);
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

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && (target.isContentEditable || target.matches('input, textarea, select'));
}
