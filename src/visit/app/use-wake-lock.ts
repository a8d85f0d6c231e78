import { useEffect, useState } from 'preact/hooks';

/** `unsupported`: this browser can't. `refused`: the device does not allow it now. */
export type ScreenLock = 'off' | 'held' | 'refused' | 'unsupported';

/**
 * Keeps the screen on while `wanted` and the page is in view. The browser releases the lock when the page is hidden, so it
 * is asked for again each time the page comes back.
 */
export function useWakeLock(wanted: boolean): ScreenLock {
  const [state, setState] = useState<ScreenLock>('off');
  useEffect(() => {
    if (!wanted) return setState('off');
    // Only pages of a secure address have it.
    if (!('wakeLock' in navigator)) return setState('unsupported');
    let lock: WakeLockSentinel | undefined;
    let ended = false;
    const hold = async () => {
      if (document.visibilityState !== 'visible' || (lock !== undefined && !lock.released)) return;
      try {
        const held = await navigator.wakeLock.request('screen');
        if (ended) return void held.release();
        lock = held;
        held.addEventListener('release', () => setState((before) => (before === 'held' ? 'off' : before)));
        setState('held');
      } catch {
        if (!ended) setState('refused');
      }
    };
    void hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      ended = true;
      document.removeEventListener('visibilitychange', hold);
      void lock?.release();
    };
  }, [wanted]);
  return state;
}
