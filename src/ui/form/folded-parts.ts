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

/**
 * Opens folded parts while the page is printed: those with fields, since a verdict may rest on what they hold, and the
 * details of a verdict.
 */
export function useUnfoldedPrint<T extends HTMLElement>(): RefObject<T> {
  const place = useRef<T>(null);
  useEffect(() => {
    let opened: HTMLDetailsElement[] = [];
    const unfold = () => {
      const folded = place.current?.querySelectorAll<HTMLDetailsElement>('details:not([open])') ?? [];
      opened = [...folded].filter((part) => part.matches('.verdict-details') || part.querySelector('input, textarea'));
      for (const part of opened) part.open = true;
    };
    const fold = () => {
      for (const part of opened) part.open = false;
    };
    addEventListener('beforeprint', unfold);
    addEventListener('afterprint', fold);
    return () => {
      removeEventListener('beforeprint', unfold);
      removeEventListener('afterprint', fold);
    };
  }, []);
  return place;
}
