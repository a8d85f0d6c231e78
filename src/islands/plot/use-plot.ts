import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * A plot whose script comes only when there is something to draw. If it can't be loaded the page goes on without it:
 * the verdict and its numbers do not rest on the drawing.
 */
export function usePlot<P>(load: () => Promise<ComponentType<P>>, wanted: boolean): ComponentType<P> | undefined {
  const [Part, setPart] = useState<ComponentType<P>>();
  useEffect(() => {
    if (!wanted || Part !== undefined) return;
    load().then(
      (part) => setPart(() => part),
      () => undefined,
    );
  }, [wanted]);
  return Part;
}
