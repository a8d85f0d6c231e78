import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Opens a folded part when it is wanted, and leaves closing to the person. */
export function useOpening(wanted: boolean): RefObject<HTMLDetailsElement> {
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (wanted && details.current !== null) details.current.open = true;
  }, [wanted]);
  return details;
}
