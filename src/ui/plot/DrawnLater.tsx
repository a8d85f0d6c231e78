import { type ComponentType, h } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';

interface Props<P> {
  drawing: ComponentType<P>;
  /** Pass the same object if nothing has changed, so that nothing is drawn again. Undefined: nothing to draw. */
  shows: P | undefined;
}

/** Draws one frame late, so that an entry and its verdict need not wait. An outdated drawing is removed at once. */
export function DrawnLater<P extends object>({ drawing, shows }: Props<P>) {
  const [drawn, setDrawn] = useState(shows);
  useEffect(() => setDrawn(shows), [shows]);
  const built = useMemo(() => drawn && h(drawing, drawn), [drawing, drawn]);
  return shows && built;
}
