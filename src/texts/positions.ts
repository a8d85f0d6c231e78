/** `plusU` reads "DC+ to U". */
export function positionName(id: string): string {
  return `${id.startsWith('plus') ? 'DC+' : 'DC−'} to ${id.slice(-1)}`;
}

/** `plusU` reads "upper switch of U". */
export function switchName(id: string): string {
  return `${id.startsWith('plus') ? 'upper' : 'lower'} switch of ${id.slice(-1)}`;
}

/** `plusForwardU` reads "DC+ and U, conducting". */
export function readingName(id: string): string {
  const way = id.includes('Forward') ? 'conducting' : 'blocking';
  return `${id.startsWith('plus') ? 'DC+' : 'DC−'} and ${id.slice(-1)}, ${way}`;
}
