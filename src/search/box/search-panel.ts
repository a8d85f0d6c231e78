import { Engine, type SearchResult } from './engine.ts';
import { offerList, resultList } from './result-list.ts';
import panelStyles from './search-panel.css?url';

/** Milliseconds without a key before a screen reader announces the result: not after each letter. */
const readingPause = 600;

export interface SearchPanel {
  /** Moves the focus to the first result, at once or as soon as there is one. */
  goToResults(): void;
}

/** Makes a search form answer while the person types, for keyboard, touch and screen reader. */
export function startPanel(form: HTMLFormElement): SearchPanel {
  const input = part<HTMLInputElement>(form, 'input');
  const panel = part<HTMLElement>(form, '[data-search-panel]');
  const status = part<HTMLElement>(form, '[data-search-status]');
  const siteRoot = form.dataset.siteRoot ?? '/';
  /** Loaded at once: the person is about to type. */
  let engine: Promise<Engine> | undefined = Engine.load(siteRoot);
  let asked = '';
  let searching = false;
  // A page may be left while it loads, and be shown again: the next search loads it again.
  engine.catch(() => {
    engine = undefined;
  });
  let goOn = false;
  let reading: ReturnType<typeof setTimeout> | undefined;
  addStyles();

  /**
   * One search at a time: the next one takes the words that are then in the box and skips what was typed in between.
   */
  async function search(): Promise<void> {
    if (searching) return;
    searching = true;
    let words = '';
    while (words !== asked) {
      words = asked;
      if (words !== '') await answer(words);
    }
    searching = false;
  }

  async function answer(words: string): Promise<void> {
    try {
      // Load again after a failure: the network may be back.
      engine ??= Engine.load(siteRoot);
      const found = await (await engine).search(words);
      if (words === asked) showFound(found);
    } catch {
      const failed = engine;
      engine = undefined;
      show(
        'The search could not start: its files did not arrive, or this browser is too old for it.',
        offerList([], searchFor, form.action),
      );
      asked = '';
      await failed?.then((loaded) => loaded.close()).catch(() => undefined);
    }
  }

  function showFound({ answers, readAs, nearest }: SearchResult): void {
    if (answers.length === 0) {
      const offer = nearest.length > 0 ? ' Search for a word that is spelt like it:' : '';
      show(`Nothing found for “${asked}”.${offer}`, offerList(nearest, searchFor, form.action));
    } else {
      const count = answers.length === 1 ? '1 answer' : `${answers.length} answers, the best first`;
      show(`${count}${readAs ? `, for “${readAs}”` : ''}.`, resultList(answers, siteRoot));
    }
  }

  function show(message: string, list: HTMLElement): void {
    const line = document.createElement('p');
    line.textContent = message;
    const place = links().indexOf(document.activeElement as HTMLElement);
    panel.replaceChildren(line, list);
    panel.dataset.answers = asked;
    clearTimeout(reading);
    reading = setTimeout(() => {
      status.textContent = message;
    }, readingPause);
    panel.hidden = false;
    bringUp();
    if (place >= 0 || goOn) links()[Math.max(place, 0)]?.focus();
    goOn = false;
  }

  /** If the results would be below the edge of a phone's screen, scrolls the box to the top. */
  function bringUp(): void {
    const seen = window.visualViewport?.height ?? window.innerHeight;
    if (panel.getBoundingClientRect().bottom > seen) form.scrollIntoView({ block: 'start' });
  }

  function open(): void {
    panel.hidden = false;
    bringUp();
  }

  function close(): void {
    panel.hidden = true;
  }

  const links = () => [...panel.querySelectorAll<HTMLElement>('a, button')];

  /** Searches for the words in the box, unless they are unchanged. */
  function ask(): void {
    const words = input.value.trim();
    if (words === asked) {
      if (words !== '' && panel.dataset.answers === words) open();
      return;
    }
    asked = words;
    clearTimeout(reading);
    if (words !== '') void search();
    else {
      status.textContent = '';
      close();
    }
  }

  function searchFor(term: string): void {
    input.value = term;
    input.focus();
  }

  /** Moves the focus through box and results; the box is above the first result. */
  function move(step: 1 | -1): void {
    const stops: HTMLElement[] = [input, ...links()];
    const here = stops.indexOf(document.activeElement as HTMLElement);
    stops[Math.min(Math.max(here + step, 0), stops.length - 1)]?.focus();
  }

  input.addEventListener('input', () => {
    goOn = false;
    // Without a delay: Pagefind searches in a worker.
    ask();
  });
  input.addEventListener('focus', ask);
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
  // A link to a heading on this page must close the panel, which would cover it.
  panel.addEventListener('click', ({ target }) => {
    if (target instanceof Element && target.closest('a')) close();
  });
  document.addEventListener('pointerdown', ({ target }) => {
    if (target instanceof Node && !form.contains(target)) close();
  });
  // For words typed before this script was loaded.
  ask();

  return {
    goToResults() {
      ask();
      if (panel.dataset.answers === asked && asked !== '') links()[0]?.focus();
      else goOn = asked !== '';
    },
  };
}

function addStyles(): void {
  const styles = document.createElement('link');
  styles.rel = 'stylesheet';
  styles.href = panelStyles;
  document.head.append(styles);
}

function part<T extends Element>(form: HTMLFormElement, selector: string): T {
  const found = form.querySelector<T>(selector);
  if (found === null) throw new Error(`search form lacks ${selector}`);
  return found;
}
