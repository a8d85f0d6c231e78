/** What the address names after `#`, decoded; as it stands if its encoding is damaged, as in `#50%`. */
export function fragment(hash: string = location.hash): string {
  const text = hash.slice(1);
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
