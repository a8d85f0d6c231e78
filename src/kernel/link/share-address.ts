/** The share text of an address, `#share=…`, or null. The fragment never leaves the device. */
export function shareInAddress(hash: string): string | null {
  return new URLSearchParams(hash.replace(/^#/, '')).get('share');
}

/** The address of a page of this site with a share text in its fragment, for any base path. */
export function shareAddress(page: string | URL, share: string): string {
  const address = new URL(page);
  address.hash = `share=${share}`;
  return address.href;
}
