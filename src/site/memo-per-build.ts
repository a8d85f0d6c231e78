/**
 * Computes a value once for all pages of a build; the development server computes it for each page, since files change.
 */
export function memoPerBuild<Value>(make: () => Value): () => Value {
  let made: { value: Value } | undefined;
  return () => {
    if (!import.meta.env.PROD) return make();
    made ??= { value: make() };
    return made.value;
  };
}
