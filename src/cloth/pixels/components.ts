/** A connected part of a mask. */
export interface Component {
  readonly area: number;
  /** Bounding box, both ends in it. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The connected parts of a mask, neighbours side by side only (squares that meet at a corner are two). With `joined`, a mask
 * that holds the first and more, parts that are one in it are one here, though only places of `mask` count.
 */
export function components(
  mask: Uint8Array,
  width: number,
  height: number,
  joined: Uint8Array = mask,
): Component[] {
  const seen = new Uint8Array(mask.length);
  const stack = new Int32Array(mask.length);
  const found: Component[] = [];
  for (let start = 0; start < mask.length; start++) {
    if (!joined[start] || seen[start]) continue;
    let area = 0;
    let left = width;
    let right = -1;
    let top = height;
    let bottom = -1;
    let depth = 0;
    stack[depth++] = start;
    seen[start] = 1;
    while (depth > 0) {
      const p = stack[--depth] as number;
      const x = p % width;
      const y = (p - x) / width;
      if (mask[p]) {
        area++;
        if (x < left) left = x;
        if (x > right) right = x;
        if (y < top) top = y;
        if (y > bottom) bottom = y;
      }
      // Written out for the four neighbours: a function for them would be made anew for each part.
      if (x > 0 && joined[p - 1] && !seen[p - 1]) {
        seen[p - 1] = 1;
        stack[depth++] = p - 1;
      }
      if (x < width - 1 && joined[p + 1] && !seen[p + 1]) {
        seen[p + 1] = 1;
        stack[depth++] = p + 1;
      }
      if (y > 0 && joined[p - width] && !seen[p - width]) {
        seen[p - width] = 1;
        stack[depth++] = p - width;
      }
      if (y < height - 1 && joined[p + width] && !seen[p + width]) {
        seen[p + width] = 1;
        stack[depth++] = p + width;
      }
    }
    if (area > 0) found.push({ area, left, right, top, bottom });
  }
  return found;
}
