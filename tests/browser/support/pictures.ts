import type { Page } from 'playwright-core';
import { exifOf } from '../../support/jpegs.ts';

/** A picture of that size in the page, as a camera writes it: red on the left, blue on the right, EXIF in front. */
export async function cameraPicture(page: Page, width = 2400, height = 1200): Promise<Buffer> {
  const plain = await page.evaluate(
    ([wide, high]) => {
      const canvas = document.createElement('canvas');
      canvas.width = wide;
      canvas.height = high;
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      context.fillStyle = '#f00';
      context.fillRect(0, 0, wide / 2, high);
      context.fillStyle = '#00f';
      context.fillRect(wide / 2, 0, wide / 2, high);
      // Detail all over, as in a photograph, so that it does not get small by itself.
      for (let spot = 0; spot < 60_000; spot += 1) {
        const [x, y] = [(spot * 7919) % wide, (spot * 104_729) % high];
        context.fillStyle = `rgba(${spot % 256}, ${(spot * 3) % 256}, 0, 0.4)`;
        context.fillRect(x, y, 5, 5);
      }
      return canvas.toDataURL('image/jpeg', 0.95).split(',')[1] ?? '';
    },
    [width, height] as const,
  );
  const bytes = Buffer.from(plain, 'base64');
  return Buffer.concat([bytes.subarray(0, 2), Buffer.from(exifOf(6)), bytes.subarray(2)]);
}

export function pictureFile(buffer: Buffer, name = 'IMG_0417.jpg') {
  return { name, mimeType: 'image/jpeg', buffer };
}
