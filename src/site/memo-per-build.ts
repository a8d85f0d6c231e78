/** Works something out once for all pages of a build; a server for development does so anew for each, since files change. */
export function memoPerBuild<Value>(make: () => Value): () => Value {
  let made: { value: Value } | undefined;
  return () => {
    if (!import.meta.env.PROD) return make();
    made ??= { value: make() };
    return made.value;
  };
}
