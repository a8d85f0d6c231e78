import { fragment } from '../../ui/fragment.ts';

/** Folds what stands after the steps, and opens it for an address that leads into it, and on paper. */
const folds = [...document.querySelectorAll<HTMLDetailsElement>('details.fold')];
const onPaper = [...folds, ...document.querySelectorAll<HTMLDetailsElement>('details.hazards-of-steps')];

function openNamed(): void {
  const named = document.getElementById(fragment());
  const fold = named?.closest<HTMLDetailsElement>('details.fold');
  if (named === null || fold == null) return;
  fold.open = true;
  named.scrollIntoView();
}

for (const fold of folds) fold.open = false;
openNamed();
addEventListener('hashchange', openNamed);

let printed: HTMLDetailsElement[] = [];
addEventListener('beforeprint', () => {
  printed = onPaper.filter((fold) => !fold.open);
  for (const fold of printed) fold.open = true;
});
addEventListener('afterprint', () => {
  for (const fold of printed) fold.open = false;
});
