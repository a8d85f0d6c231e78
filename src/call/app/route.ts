/** The fragment that names a kept call. */
export const callHash = (id: string) => `#call=${id}`;

/** The id of the call that a fragment names. */
export const callIn = (hash: string): string | null => new URLSearchParams(hash.replace(/^#/, '')).get('call');

/** Names the call in the address. Once, and not with each key: some browsers refuse more than a hundred changes in half a minute. */
export function nameInAddress(id: string): void {
  if (location.hash !== callHash(id)) history.replaceState(null, '', callHash(id));
}
