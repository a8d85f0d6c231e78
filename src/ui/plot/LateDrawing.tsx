import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { DrawnLater } from './DrawnLater.tsx';

interface Props<P> {
  load: () => Promise<ComponentType<P>>;
  /** What is drawn; nothing yet where undefined. */
  shows: P | undefined;
}

/**
 * A drawing whose script comes only when there is something to draw. If it can't be loaded the page says so and goes on
 * without it: the verdict and its numbers do not rest on the drawing.
 */
export function LateDrawing<P extends object>({ load, shows }: Props<P>) {
  const [Drawing, setDrawing] = useState<ComponentType<P>>();
  const [failed, setFailed] = useState(false);
  const wanted = shows !== undefined;
  useEffect(() => {
    if (!wanted || Drawing !== undefined) return;
    load().then(
      (drawing) => setDrawing(() => drawing),
      () => setFailed(true),
    );
  }, [wanted]);
  if (Drawing !== undefined) return <DrawnLater drawing={Drawing} shows={shows} />;
  return failed && wanted ? (
    <p class="hint">
      The drawing could not be loaded. The verdict below does not need it. Load the page again to see it.
    </p>
  ) : null;
}
