/** In ms: until a page that an action leaves is gone; the second tap of a double tap comes sooner. */
const pause = 1000;

/**
 * Runs one action at a time: a second tap of a wet glove, while the first still stores a visit or opens it, would begin
 * another one. Keep it for the life of the component.
 */
export function oneAtATime(): (action: () => Promise<unknown>) => void {
  let busy = false;
  return (action) => {
    if (busy) return;
    busy = true;
    const release = () => {
      setTimeout(() => {
        busy = false;
      }, pause);
    };
    void action().then(release, (error: unknown) => {
      release();
      throw error;
    });
  };
}
