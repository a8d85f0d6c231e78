import { useEffect } from 'preact/hooks';

/**
 * Calls `load` while a script is `missing`: at once, and when the page is shown again. A browser that keeps a page which
 * was left while the script came gives up the script, and shows the page again without it.
 */
export function useLateScript(missing: boolean, load: () => Promise<void>): void {
  useEffect(() => {
    if (!missing) return;
    void load();
    addEventListener('pageshow', load);
    return () => removeEventListener('pageshow', load);
  }, [missing]);
}
