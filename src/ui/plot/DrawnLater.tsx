import { type ComponentType, h } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';

interface Props<P> {
  drawing: ComponentType<P>;
  /** The same object as before where nothing has changed: then nothing is drawn anew. Undefined: nothing to draw. */
  shows: P | undefined;
}

/**
 * A drawing that follows a frame after what it shows: an entry and its verdict need not wait for it. What is no longer
 * so goes at once.
 */
export function DrawnLater<P extends object>({ drawing, shows }: Props<P>) {
  const [drawn, setDrawn] = useState(shows);
  useEffect(() => setDrawn(shows), [shows]);
  const built = useMemo(() => drawn && h(drawing, drawn), [drawing, drawn]);
  return shows && built;
}
