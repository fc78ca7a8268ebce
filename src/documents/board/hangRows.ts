import type { HangPiece } from "./hangPiece.ts";
import { areaWeight, aspectOf } from "./weights.ts";

/** What hangs below each other in one place of the lower row: one piece, or two small ones. */
export type Column = readonly HangPiece[];

/** A row of more columns than this would be narrower than its captions, and nearly even. */
const MOST_COLUMNS = 6;

const byId = (a: HangPiece, b: HangPiece): number => (a.id < b.id ? -1 : 1);
const bulk = (p: HangPiece): number => areaWeight(p) * aspectOf(p);

/** The upper row: the anchor, the main cloth, then the tallest geometric (else the largest left). The lower row: the others. */
export function hangRows(pieces: readonly HangPiece[]): { upper: HangPiece[]; lower: Column[] } {
  const anchor = pieces.filter((p) => p.role === "anchor");
  const main = pieces.filter((p) => p.role === "main").slice(0, 1);
  const rest = pieces
    .filter((p) => !anchor.includes(p) && !main.includes(p))
    .sort((a, b) => areaWeight(b) - areaWeight(a) || byId(a, b));
  // Three stand on the datum, four where there are many.
  const wanted = pieces.length >= 11 ? 4 : 3;
  const geometric = rest
    .filter((p) => p.role === "geometric" || p.role === "supporting")
    .sort((a, b) => aspectOf(a) - aspectOf(b) || areaWeight(b) - areaWeight(a) || byId(a, b))[0];
  const third = geometric ?? rest[0];
  const upper = [...anchor, ...main, ...(third ? [third] : [])];
  let lower = rest.filter((p) => p !== third);
  const spare = Math.min(wanted - upper.length, lower.length - (pieces.length > 4 ? 2 : 0));
  upper.push(...lower.splice(0, Math.max(0, spare)));
  if (lower.length === 1) {
    upper.push(...lower);
    lower = [];
  }
  return { upper, lower: columnsOf(lowerOrder(lower)) };
}

/** Largest at the left, then dark and light in turn, smallest at the right. */
function lowerOrder(pieces: readonly HangPiece[]): HangPiece[] {
  const bySize = [...pieces].sort((a, b) => bulk(b) - bulk(a) || byId(a, b));
  if (bySize.length < 3) return bySize;
  const first = bySize[0] as HangPiece;
  const last = bySize.at(-1) as HangPiece;
  const middle = bySize.slice(1, -1).sort((a, b) => a.lightness - b.lightness || byId(a, b));
  const out: HangPiece[] = [first];
  let dark = first.lightness >= 55;
  while (middle.length > 0) {
    out.push(dark ? (middle.shift() as HangPiece) : (middle.pop() as HangPiece));
    dark = !dark;
  }
  return [...out, last];
}

/** Where there are too many for a row, the smallest neighbours of the middle share a place, one below the other. */
function columnsOf(row: readonly HangPiece[]): Column[] {
  const columns: HangPiece[][] = row.map((p) => [p]);
  while (columns.length > MOST_COLUMNS) {
    let at = -1;
    for (let n = 1; n < columns.length - 1; n++) {
      const [a, b] = [columns[n], columns[n + 1]] as [HangPiece[], HangPiece[]];
      if (a.length + b.length > 2) continue;
      // A tall stripe has no half of a place.
      if ([...a, ...b].some((p) => aspectOf(p) < 0.6)) continue;
      const size = (k: number): number =>
        [columns[k], columns[k + 1]].flat().reduce((sum, p) => sum + bulk(p as HangPiece), 0);
      if (at < 0 || size(n) < size(at)) at = n;
    }
    if (at < 0) break;
    columns.splice(at, 2, [...(columns[at] as HangPiece[]), ...(columns[at + 1] as HangPiece[])]);
  }
  return columns;
}
