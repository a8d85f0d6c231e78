import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { exifOf, markersOf } from '../../support/jpegs.ts';
import { eachEngine } from './each-engine.ts';

const half = readFileSync(join(import.meta.dirname, '../../visits/half-done.json'), 'utf8');

/** Chooses the visit's file, as from a file of this device. Runs in the page. */
function importFile(text: string): void {
  const input = document.querySelector<HTMLInputElement>('#import-file');
  const files = new DataTransfer();
  files.items.add(new File([text], 'visit.json', { type: 'application/json' }));
  if (input === null) throw new Error('no field');
  input.files = files.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
}

/** Opens the step unless it is open; steps above it may move it while they open. Runs in the page. */
function opened(): boolean {
  const step = document.querySelector('[data-step="inspect"]');
  if (step === null) return false;
  const isOpen = step.querySelector('.photographs') !== null;
  if (!isOpen) step.querySelector<HTMLElement>('h3 button')?.click();
  return isOpen;
}

/** Chooses a picture, red on the left and blue on the right, with this EXIF in front. Runs in the page. */
async function attach(exif: number[]): Promise<void> {
  const canvas = document.createElement('canvas');
  canvas.width = 2000;
  canvas.height = 1000;
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  context.fillStyle = '#f00';
  context.fillRect(0, 0, 1000, 1000);
  context.fillStyle = '#00f';
  context.fillRect(1000, 0, 1000, 1000);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg'));
  const bytes = new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0));
  const files = new DataTransfer();
  const parts = [bytes.slice(0, 2), Uint8Array.from(exif), bytes.slice(2)];
  files.items.add(new File(parts, 'IMG_0417.jpg', { type: 'image/jpeg' }));
  const input = document.querySelector<HTMLInputElement>('[data-step="inspect"] .photographs input[multiple]');
  if (input === null) throw new Error('no field');
  input.files = files.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
}

/** The stored bytes, and the picture as it is drawn. Runs in the page. */
async function kept(): Promise<{ jpeg: number[]; width: number; height: number; top: string; bottom: string }> {
  const db = await new Promise<IDBDatabase>((done) => {
    const opening = indexedDB.open('overcurrent-fieldbook');
    opening.onsuccess = () => done(opening.result);
  });
  const rows = await new Promise<{ jpeg: Uint8Array }[]>((done) => {
    const asking = db.transaction('photographs').objectStore('photographs').getAll();
    asking.onsuccess = () => done(asking.result);
  });
  db.close();
  const image = document.querySelector('.photograph') as HTMLImageElement;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth;
  canvas.height = image.naturalHeight;
  const context = canvas.getContext('2d') as CanvasRenderingContext2D;
  context.drawImage(image, 0, 0);
  const colour = (y: number) => {
    const [red = 0, , blue = 0] = context.getImageData(canvas.width / 2, y, 1, 1).data;
    return red > blue ? 'red' : 'blue';
  };
  return {
    jpeg: Array.from(rows[0]?.jpeg ?? []),
    width: canvas.width,
    height: canvas.height,
    top: colour(20),
    bottom: colour(canvas.height - 20),
  };
}

eachEngine((engine) => {
  test('a photograph is kept upright and without EXIF, and is there after a reload', async () => {
    const tab = await engine.open('/visit/');
    await tab.see('#import-file');
    await tab.evaluate(importFile, half);
    await tab.waitFor(opened);
    await tab.evaluate(attach, exifOf(6));
    await tab.see('[data-step="inspect"] .photograph');
    const expectKept = async () => {
      const { jpeg, ...drawn } = await tab.evaluate(kept);
      expect(drawn).toEqual({ width: 800, height: 1600, top: 'red', bottom: 'blue' });
      expect(markersOf(Uint8Array.from(jpeg))).not.toContain(0xe1);
      expect(jpeg.length).toBeGreaterThan(1000);
    };
    await expectKept();
    await tab.reload();
    await tab.waitFor(opened);
    await tab.see('[data-step="inspect"] .photograph');
    await expectKept();
  });
});
