/**
 * A view of a model in which reading a key that is not there throws. Nunjucks by itself only stops at
 * printing an undefined value: a mistyped name in an `if` or a `for` would drop a caution in silence.
 * What may be absent is null in the model. `"key" in object` asks without reading.
 */
export function strictView<T>(value: T, name: string): T {
  if (typeof value !== "object" || value === null) return value;
  return new Proxy(value, {
    get(target, key) {
      const found: unknown = Reflect.get(target, key);
      if (typeof key === "symbol" || typeof found === "function") return found;
      if (!(key in target)) {
        // Nunjucks reads past the end of lists; that is undefined as in any list.
        if (Array.isArray(target) && /^\d+$/.test(key)) return undefined;
        throw new Error(`${name} has no "${key}"`);
      }
      return strictView(found, Array.isArray(target) ? `${name}[${key}]` : `${name}.${key}`);
    },
  });
}
