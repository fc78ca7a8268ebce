/** What is made when it is first asked for, and then kept: what dear signs say is often not needed. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
