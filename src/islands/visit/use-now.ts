import { useEffect, useMemo, useState } from 'preact/hooks';
import { isoTime } from '../../record/iso-time.ts';

/** Short against the pause that ends a stretch of work. */
const lookAtClockEvery = 20_000;

/**
 * The time as an ISO text: of the last change of `changed`, and anew every few seconds and whenever the page comes back
 * into view, so that a page that was left open does not show what held before.
 */
export function useNow(changed: unknown): string {
  const [looks, setLooks] = useState(0);
  useEffect(() => {
    const look = () => setLooks((count) => count + 1);
    const timer = setInterval(look, lookAtClockEvery);
    document.addEventListener('visibilitychange', look);
    addEventListener('pageshow', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
      removeEventListener('pageshow', look);
    };
  }, []);
  return useMemo(() => isoTime(new Date()), [changed, looks]);
}
