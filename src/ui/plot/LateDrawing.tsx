import { type ComponentType, h } from 'preact';
import { useState } from 'preact/hooks';
import { useLateScript } from '../use-late-script.ts';

interface Props<P> {
  load: () => Promise<ComponentType<P>>;
  /** Properties of the drawing; undefined while there is nothing to draw. */
  shows: P | undefined;
}

/**
 * A drawing whose script is loaded only when there is something to draw. If that fails the page says so and works
 * without it: the verdict and its numbers do not depend on the drawing.
 */
export function LateDrawing<P extends object>({ load, shows }: Props<P>) {
  const [Drawing, setDrawing] = useState<ComponentType<P>>();
  const [failed, setFailed] = useState(false);
  const wanted = shows !== undefined;
  useLateScript(wanted && Drawing === undefined, () =>
    load().then(
      (drawing) => setDrawing(() => drawing),
      () => setFailed(true),
    ),
  );
  if (!wanted) return null;
  if (Drawing !== undefined) return h(Drawing, shows);
  return failed ? (
    <p class="hint">
      The drawing could not be loaded. The verdict below does not need it. Load the page again to see it.
    </p>
  ) : null;
}
