import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** On paper nothing is folded away that a verdict may rest on: parts with fields are open while the page is printed. */
export function useUnfoldedPrint<T extends HTMLElement>(): RefObject<T> {
  const place = useRef<T>(null);
  useEffect(() => {
    let opened: HTMLDetailsElement[] = [];
    const unfold = () => {
      const folded = place.current?.querySelectorAll<HTMLDetailsElement>('details:not([open])') ?? [];
      opened = [...folded].filter((part) => part.querySelector('input, textarea') !== null);
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
