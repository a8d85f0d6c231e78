import { limitValue } from '../../kernel/limits.ts';

/** What a photograph shows: its caption, or its number. */
export function photographName({ caption }: { caption: string }, number: number): string {
  return caption.trim() === '' ? `Photograph ${number}, without a caption` : caption;
}

export const photographTexts = {
  summary: (count: number): string =>
    count === 0 ? 'Photographs' : count === 1 ? '1 photograph' : `${count} photographs`,
  /** `count`: photographs of the whole visit. */
  hint: (count: number): string =>
    `Scaled down on this device, without place and camera data; kept with the visit and in its file, not in a link. ${count} of ${limitValue('photographs-number')} in this visit.`,
  caption: (number: number): string => `What photograph ${number} shows`,
  working: 'The picture is being scaled down …',
  onlyHere: 'Not stored: only in this window. Export the visit as a file before you close it.',
  askRemove: 'Remove this photograph? It can’t be brought back.',
  notInLink: 'Photographs are not in the link. The file has them.',
  none: 'No photographs.',
} as const;
