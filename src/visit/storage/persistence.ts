/**
 * Asks the browser not to clear this site's storage when the device runs short. True if it agreed, false if it
 * refused, undefined if it can't be asked. Never throws.
 */
export async function askToPersist(
  storage: Partial<Pick<StorageManager, 'persist' | 'persisted'>> | undefined = globalThis.navigator?.storage,
): Promise<boolean | undefined> {
  try {
    if (await storage?.persisted?.()) return true;
    return await storage?.persist?.();
  } catch {
    return undefined;
  }
}
