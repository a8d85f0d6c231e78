/**
 * A drawing as text to be kept and compared: an element a line, and without the marks that the build derives from the
 * place of a source file. If a change is meant, `npm run test:browser -- drawings each-calculator -u` keeps the new one.
 */
export function keptDrawing(svg: string): string {
  const plain = svg.replaceAll(/ data-astro-cid-[\w-]+(="")?/g, '').replaceAll(/>\s*</g, '>\n<');
  return `${plain.trim()}\n`;
}

/** What a figure that was never computed leaves in a drawing. */
export const uncomputed = /\bNaN\b|\bundefined\b|\bInfinity\b|\[object/;
