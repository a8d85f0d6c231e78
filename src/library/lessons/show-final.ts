import { keptResult } from '../../practice/app/kept-results.ts';
import type { CaseResult } from '../../practice/words/case-result.ts';
import { finalSummary } from './final-summary.ts';

/** Writes below each case how it ended, and below each set what that comes to. */
function show(): void {
  for (const set of document.querySelectorAll<HTMLElement>('[data-final-set]')) {
    const places = [...set.querySelectorAll<HTMLElement>('[data-result-of]')];
    const results = places.map((place) => keptResult(place.dataset.resultOf ?? ''));
    places.forEach((place, i) => {
      const result = results[i];
      place.replaceChildren(...(result === undefined ? [] : shown(result)));
    });
    const summary = set.querySelector('[data-summary]');
    summary?.replaceChildren(...finalSummary(results).map((text) => element('p', text)));
  }
}

function shown({ word, unsafe, unproven, unnecessary }: CaseResult): HTMLElement[] {
  const parts: [string, string[]][] = [
    ['Unsafe', unsafe],
    ['Unproven', unproven],
    ['Unnecessary', unnecessary],
  ];
  const list = element('dl');
  for (const [name, sentences] of parts) {
    const texts = sentences.length > 0 ? sentences : ['Nothing.'];
    list.append(element('dt', name), ...texts.map((text) => element('dd', text)));
  }
  return [element('p', `Decision: ${word}.`), list];
}

function element(name: string, text = ''): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}

addEventListener('storage', show);
addEventListener('pageshow', show);
show();
