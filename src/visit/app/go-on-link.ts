import { unfinishedVisit } from '../storage/unfinished-visit.ts';
import { visitHash } from './route.ts';

/** Makes a hidden link lead to the unfinished visit of this device and shows it; without one it stays hidden. */
export async function nameUnfinishedVisit(link: HTMLAnchorElement): Promise<void> {
  const visit = await unfinishedVisit();
  if (visit === undefined) return;
  const { id, title, changed } = visit;
  link.href = `${link.dataset.unfinishedVisit ?? ''}${visitHash(id)}`;
  const name = document.createElement('strong');
  name.textContent = `Go on: ${title}`;
  const when = document.createElement('span');
  when.textContent = changed === '' ? 'The visit has no decision yet' : `No decision yet, last change ${changed}`;
  link.replaceChildren(name, ' ', when);
  link.hidden = false;
}
