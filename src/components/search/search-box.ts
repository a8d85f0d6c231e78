import { search } from './engine.ts';
import { resultList } from './result-list.ts';

/** Long enough that a person who types is not answered letter by letter. */
const typingPause = 150;

/** Makes one search form answer while the person types, by keyboard, touch and screen reader alike. */
export function startSearchBox(form: HTMLFormElement): void {
  const input = part<HTMLInputElement>(form, 'input');
  const panel = part<HTMLElement>(form, '[data-search-panel]');
  const status = part<HTMLElement>(form, '[data-search-status]');
  const nothing = part<HTMLTemplateElement>(form, '[data-search-nothing]');
  const siteRoot = form.dataset.siteRoot ?? '/';
  let answered = '';
  let timer: ReturnType<typeof setTimeout> | undefined;

  const links = () => [...panel.querySelectorAll('a')];
  const close = () => {
    panel.hidden = true;
  };

  function show(message: string, ...content: Node[]): void {
    const line = document.createElement('p');
    line.textContent = message;
    status.textContent = message;
    panel.replaceChildren(line, ...content);
    open();
  }

  /** On a phone the box may stand low on the page, with its results below the edge: then the box goes to the top. */
  function open(): void {
    panel.hidden = false;
    const seen = window.visualViewport?.height ?? window.innerHeight;
    if (panel.getBoundingClientRect().bottom > seen) form.scrollIntoView({ block: 'start' });
  }

  /** Answers the words in the box; an answer that comes after the words have changed is dropped. */
  async function answer(): Promise<void> {
    clearTimeout(timer);
    const words = input.value.trim();
    if (words === '') {
      answered = '';
      status.textContent = '';
      close();
      return;
    }
    if (words === answered) {
      open();
      return;
    }
    try {
      const { pages, count } = await search(words, siteRoot);
      if (words !== input.value.trim()) return;
      answered = words;
      panel.dataset.answers = words;
      if (count === 0) show(`Nothing found for “${words}”.`, nothing.content.cloneNode(true));
      else show(count === 1 ? '1 page found.' : `${count} pages found.`, resultList(pages));
    } catch {
      show('The search index could not be loaded.', nothing.content.cloneNode(true));
    }
  }

  /** Moves the focus through box and results; above the first result is the box. */
  function move(step: 1 | -1): void {
    const stops = [input, ...links()];
    const here = stops.indexOf(document.activeElement as HTMLInputElement | HTMLAnchorElement);
    stops[Math.min(Math.max(here + step, 0), stops.length - 1)]?.focus();
  }

  input.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(answer, typingPause);
  });
  input.addEventListener('focus', () => {
    if (input.value.trim() === answered && answered !== '') open();
  });
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    await answer();
    links()[0]?.focus();
  });
  form.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && !panel.hidden) {
      event.preventDefault();
      input.focus();
      close();
    } else if (!panel.hidden && (event.key === 'ArrowDown' || event.key === 'ArrowUp')) {
      event.preventDefault();
      move(event.key === 'ArrowDown' ? 1 : -1);
    }
  });
  form.addEventListener('focusout', ({ relatedTarget }) => {
    if (relatedTarget instanceof Node && !form.contains(relatedTarget)) close();
  });
  // A link to a heading of this same page leaves the page open, but must not leave the panel in front of it.
  panel.addEventListener('click', ({ target }) => {
    if (target instanceof Element && target.closest('a')) close();
  });
  document.addEventListener('pointerdown', ({ target }) => {
    if (target instanceof Node && !form.contains(target)) close();
  });
  document.addEventListener('keydown', (event) => {
    const { key, ctrlKey, metaKey, altKey, target } = event;
    if (key !== '/' || ctrlKey || metaKey || altKey || isTyping(target)) return;
    event.preventDefault();
    input.focus();
  });
}

function part<T extends Element>(form: HTMLFormElement, selector: string): T {
  const found = form.querySelector<T>(selector);
  if (found === null) throw new Error(`search form lacks ${selector}`);
  return found;
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && (target.isContentEditable || target.matches('input, textarea, select'));
}
