/**
 * Loads the page again, if there is a network by now: browsers remember that a script could not be fetched, and ask for
 * it only in a new page. Entries are kept. Returns if nothing can be reached.
 */
export async function loadAgain(): Promise<void> {
  const reached = await fetch(location.href, { method: 'HEAD', cache: 'no-store' }).then(
    () => true,
    () => false,
  );
  if (reached) location.reload();
}
