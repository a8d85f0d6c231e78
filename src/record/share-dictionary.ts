export const shareDictionary = new TextEncoder().encode('x');
