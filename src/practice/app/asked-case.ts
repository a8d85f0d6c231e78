/** What the address asks for: `#7K3-…` or `?case=7K3-…`, as typed; undefined for the start. */
export function askedCase({ hash, search }: Pick<Location, 'hash' | 'search'> = location): string | undefined {
  const asked = hash.length > 1 ? decodeURIComponent(hash.slice(1)) : new URLSearchParams(search).get('case');
  return asked === null || asked === '' || asked === 'content' ? undefined : asked;
}
