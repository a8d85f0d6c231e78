import { useEffect, useReducer } from 'preact/hooks';

/**
 * Draws the component again whenever the page is shown. A browser that brings a page back, by reload or from its cache,
 * may have emptied or filled the controls by itself; drawing sets each control to the state that is judged.
 */
export function useRedrawOnShow(): void {
  const [, redraw] = useReducer((count: number, _: undefined) => count + 1, 0);
  useEffect(() => {
    // Some browsers restore the controls only after they have said that the page is shown.
    const draw = () => {
      redraw(undefined);
      setTimeout(() => redraw(undefined));
    };
    addEventListener('pageshow', draw);
    return () => removeEventListener('pageshow', draw);
  }, []);
}
