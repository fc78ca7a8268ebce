/** A width that is wanted, and between what it must stay. */
export interface Wanted {
  readonly wanted: number;
  readonly least: number;
  readonly most: number;
}

/**
 * Widths in proportion to what is wanted, none under its least or over its most, that together fill `room` as nearly as these allow.
 * Where even the least ones are too wide together, all give way alike.
 */
export function shareOut(parts: readonly Wanted[], room: number): number[] {
  const least = parts.reduce((sum, p) => sum + p.least, 0);
  if (least >= room) return parts.map((p) => (p.least * room) / least);
  const at = (scale: number): number[] =>
    parts.map((p) => Math.min(Math.max(p.least, p.most), Math.max(p.least, p.wanted * scale)));
  const sum = (scale: number): number => at(scale).reduce((a, b) => a + b, 0);
  let high = 1;
  while (sum(high) < room && high < 1e4) high *= 2;
  let low = 0;
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2;
    if (sum(middle) > room) high = middle;
    else low = middle;
  }
  return at(low);
}
