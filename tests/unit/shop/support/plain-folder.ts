import { shopFormatAt } from '../../../../src/shop/file/shop-format.ts';
import { type Folder, syncFolder } from '../../../../src/shop/merge/sync.ts';
import { Tablet } from './tablet.ts';

export const format = shopFormatAt(() => '2026-03-03T08:00:00Z');

/** A folder without any client between the tablets. */
export class PlainFolder implements Folder {
  readonly texts = new Map<string, string>();
  writes = 0;
  async files() {
    return [...this.texts].map(([name, text]) => ({ name, text }));
  }
  async write(name: string, text: string): Promise<void> {
    this.writes += 1;
    this.texts.set(name, text);
  }
}

/** Two tablets and a folder. */
export function shop() {
  const [a, b, folder] = [new Tablet('tablet-a'), new Tablet('tablet-b'), new PlainFolder()];
  const both = async () => {
    const first = await syncFolder(a, folder, format);
    const second = await syncFolder(b, folder, format);
    return { first, second };
  };
  return { a, b, folder, both };
}
