import * as z from 'zod/mini';
import { limitValue } from '../../kernel/limits.ts';
import { fromBase64, toBase64 } from '../../kernel/link/base64.ts';
import { text, time, visitId } from '../../kernel/link/schema-parts.ts';
import { stepIds } from '../steps/ids.ts';
import { plainJpeg } from './plain-jpeg.ts';

/** Base64 takes four letters for three bytes. */
const longestBase64 = Math.ceil(limitValue('photograph-file') / 3) * 4;

/** A photograph in the file of a visit. */
const photographSchema = z.strictObject({
  /** Random, and kept by every copy: by it two devices know that a photograph is the same. */
  id: visitId,
  step: z.enum(stepIds),
  /** When it was attached. */
  at: time,
  /** When its caption was last changed. The picture itself never changes. */
  changedAt: time,
  caption: text,
  /** A JPEG without EXIF, as base64. */
  jpeg: z.string().check(z.regex(/^[A-Za-z0-9+/]+={0,2}$/), z.maxLength(longestBase64)),
});

/** Optional in the file, so that a visit without photographs opens in an older edition too. */
export const photographList = z.array(photographSchema).check(z.maxLength(limitValue('photographs-number')));

type WrittenPhotograph = z.output<typeof photographSchema>;

/** A photograph of a step, as the device keeps it. */
export interface Photograph extends Omit<WrittenPhotograph, 'jpeg'> {
  jpeg: Uint8Array<ArrayBuffer>;
}

export function writtenPhotograph({ jpeg, ...notes }: Photograph): WrittenPhotograph {
  return { ...notes, jpeg: toBase64(jpeg) };
}

/** The photograph of a file; undefined if its picture is damaged. Whatever a camera wrote beside the picture is taken out. */
export function readPhotograph({ jpeg, ...notes }: WrittenPhotograph): Photograph | undefined {
  const bytes = fromBase64(jpeg);
  const plain = bytes && plainJpeg(bytes);
  return plain && { ...notes, jpeg: plain.jpeg };
}

/** In the order in which they were attached. */
export function inOrder(photographs: readonly Photograph[]): Photograph[] {
  const moment = ({ at, id }: Photograph) => [Date.parse(at), id] as const;
  return [...photographs].sort((a, b) => {
    const [[timeA, idA], [timeB, idB]] = [moment(a), moment(b)];
    return timeA - timeB || (idA < idB ? -1 : 1);
  });
}

/**
 * The photographs of one visit from two places: each one of either, and of one that both have, the caption that was
 * changed later. The order of the two makes no difference.
 */
export function mergedPhotographs(a: readonly Photograph[], b: readonly Photograph[]): Photograph[] {
  const byId = new Map<string, Photograph>();
  for (const one of [...a, ...b]) {
    const other = byId.get(one.id);
    byId.set(one.id, other === undefined ? one : later(one, other));
  }
  return inOrder([...byId.values()]);
}

function later(a: Photograph, b: Photograph): Photograph {
  const difference = Date.parse(a.changedAt) - Date.parse(b.changedAt);
  if (difference !== 0) return difference > 0 ? a : b;
  return a.caption >= b.caption ? a : b;
}
