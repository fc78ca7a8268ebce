/**
 * A path as it stands in a manifest: CR, LF and the percent sign are encoded, so that a line stays a line (RFC 8493, 2.1.3). Nothing
 * else is.
 */
export function encodePath(path: string): string {
  return path.replaceAll("%", "%25").replaceAll("\n", "%0A").replaceAll("\r", "%0D");
}

/** The path that a manifest's line means. Before version 1.0 the percent sign itself was not encoded. */
export function decodePath(text: string, isOld = false): string {
  const known = isOld ? /%0[ad]/gi : /%(?:0[ad]|25)/gi;
  return text.replace(known, (code) => decodeURIComponent(code));
}

/**
 * True where a path could lead out of a bag, on this system or another: one that begins at a root, a drive or a person's home, or that
 * goes upwards (RFC 8493, 5: it must not be followed).
 */
export function leavesBag(path: string): boolean {
  return /^(?:[\\/~]|[a-z]:)/i.test(path) || path.split(/[\\/]/).includes("..");
}

/** Paths in one order on every machine: by their code units, as `LC_ALL=C sort` has plain names. */
export function byPath(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
