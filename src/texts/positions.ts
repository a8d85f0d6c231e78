/** `plusU` reads "DC+ to U". */
export function positionName(id: string): string {
  return `${id.startsWith('plus') ? 'DC+' : 'DC−'} to ${id.slice(-1)}`;
}

/** `plusU` reads "upper switch of U". */
export function switchName(id: string): string {
  return `${id.startsWith('plus') ? 'upper' : 'lower'} switch of ${id.slice(-1)}`;
}
