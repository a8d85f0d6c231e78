/** The case that the address asks for: `#case=marrow-bay-lift`. The fragment never leaves the device. */
export function caseInAddress(hash: string = location.hash): string | null {
  return new URLSearchParams(hash.slice(1)).get('case');
}

/** Whether the page came by reload or by going back, so that the person has been here before. */
export function openedByReload(): boolean {
  const [navigation] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  return navigation?.type === 'reload' || navigation?.type === 'back_forward';
}
