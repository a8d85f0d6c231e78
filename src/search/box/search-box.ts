import type { SearchPanel } from './search-panel.ts';

/** Milliseconds on a page until its search is fetched from the device. */
const stay = 600;

/** All that every page carries of the search: the rest is fetched when somebody turns to the box. */
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
  // Comes a moment before the focus.
  input?.addEventListener('pointerdown', fetchAll);
  // Costs no network if all files lie on the device; a page that somebody only passes through needs no search.
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
