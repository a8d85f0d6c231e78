/** The decimal mark of the person who filled these fields: a comma if they typed one before decimals, else the display's point. */
export function markOf(texts: readonly string[]): '.' | ',' {
  return texts.some((text) => /\d,\d/.test(text) && !text.includes('.')) ? ',' : '.';
}
