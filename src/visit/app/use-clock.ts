import { useEffect, useRef } from 'preact/hooks';

/** In milliseconds; short compared with the pause that ends a stretch of work. */
const lookAtClockEvery = 20_000;

/**
 * Calls `look` every 20 seconds and whenever the page comes back into view, so that a page that was left open does not
 * show an outdated state.
 */
export function useClock(look: () => void): void {
  const latest = useRef(look);
  latest.current = look;
  useEffect(() => {
    const lookNow = () => latest.current();
    const timer = setInterval(lookNow, lookAtClockEvery);
    document.addEventListener('visibilitychange', lookNow);
    addEventListener('pageshow', lookNow);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', lookNow);
      removeEventListener('pageshow', lookNow);
    };
  }, []);
}
