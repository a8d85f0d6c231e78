import { limitValue } from '../../../kernel/limits.ts';
import { type Problem, type Result, succeeded } from '../../../kernel/link/problem.ts';
import { type PhotographProblemKind, photographRefused } from '../../record/photograph-problem.ts';
import { plainJpeg } from '../../record/plain-jpeg.ts';

/** JPEG qualities, from 0 to 1, that are tried before the picture is made smaller: lettering needs pixels most. */
const qualities = [0.75, 0.6, 0.45];
const smaller = 0.8;
const smallestSide = 200;

type Scaled = Result<Uint8Array<ArrayBuffer>, Problem<PhotographProblemKind>>;

/**
 * A chosen picture as a JPEG that fits the limits, upright, and without what the camera wrote beside it. Made on the
 * device. It is drawn through an image element, which every browser of the targets turns by its EXIF orientation;
 * `createImageBitmap` is missing in one and does not turn in another.
 */
export async function scaledPhotograph(file: File): Promise<Scaled> {
  const address = URL.createObjectURL(file);
  try {
    const image = await decoded(address);
    if (image === undefined) return photographRefused('no-picture', file.name);
    const longest = Math.max(image.naturalWidth, image.naturalHeight);
    for (let side = Math.min(longest, limitValue('photograph-side')); side > 0; side = nextSide(side)) {
      const canvas = drawn(image, side / longest);
      if (canvas === undefined) break;
      for (const quality of qualities) {
        const bytes = await encoded(canvas, quality);
        if (bytes !== undefined && bytes.length <= limitValue('photograph-file')) return succeeded(bytes);
      }
    }
    return photographRefused('not-encoded', file.name);
  } finally {
    URL.revokeObjectURL(address);
  }
}

const nextSide = (side: number) => (side * smaller < smallestSide ? 0 : side * smaller);

/** The picture, or undefined if this browser can't read it. */
function decoded(address: string): Promise<HTMLImageElement | undefined> {
  return new Promise((settle) => {
    const image = new Image();
    image.onload = () => settle(image.naturalWidth > 0 && image.naturalHeight > 0 ? image : undefined);
    image.onerror = () => settle(undefined);
    image.src = address;
  });
}

/** On white, since a JPEG has no transparency. */
function drawn(image: HTMLImageElement, scale: number): HTMLCanvasElement | undefined {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(image.naturalWidth * scale));
  canvas.height = Math.max(1, Math.round(image.naturalHeight * scale));
  const context = canvas.getContext('2d');
  if (context === null) return undefined;
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas;
}

async function encoded(canvas: HTMLCanvasElement, quality: number): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const blob = await new Promise<Blob | null>((settle) => canvas.toBlob(settle, 'image/jpeg', quality));
  return blob === null ? undefined : plainJpeg(new Uint8Array(await blob.arrayBuffer()))?.jpeg;
}
