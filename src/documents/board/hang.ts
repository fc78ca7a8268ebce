import { CAPTION_MM, type Field, GAP_MM, type HangPiece, type HungPiece } from "./hangPiece.ts";
import { areaWeight, aspectOf } from "./weights.ts";

interface Sized {
  readonly piece: HangPiece;
  width: number;
  height: number;
}

/** No lower piece is narrower than its caption can be. */
const LEAST_WIDTH = 25;
/** A row may take this much of the field's height. */
const UPPER_TOP = 0.6;
const LOWER_TOP = 0.27;
/** How much of the field's height the hanging fills before space is left above it. */
const FILL = 0.84;

/** The upper row: the anchor, the main cloth, then the tallest geometric (else the largest left). The lower row: the others. */
function rows(pieces: readonly HangPiece[]): {
  upper: HangPiece[];
  lower: HangPiece[];
} {
  const anchor = pieces.filter((p) => p.role === "anchor");
  const main = pieces.filter((p) => p.role === "main").slice(0, 1);
  const rest = pieces
    .filter((p) => !anchor.includes(p) && !main.includes(p))
    .sort((a, b) => areaWeight(b) - areaWeight(a) || (a.id < b.id ? -1 : 1));
  // Three stand on the datum, four or five where there are many: a lower row of more than eight would be narrower than its captions.
  const wanted = pieces.length >= 13 ? 5 : pieces.length >= 11 ? 4 : 3;
  const geometric = rest
    .filter((p) => p.role === "geometric" || p.role === "supporting")
    .sort(
      (a, b) =>
        aspectOf(a) - aspectOf(b) || areaWeight(b) - areaWeight(a) || (a.id < b.id ? -1 : 1),
    )[0];
  const third = geometric ?? rest[0];
  const upper = [...anchor, ...main, ...(third ? [third] : [])];
  let lower = rest.filter((p) => p !== third);
  const spare = Math.min(wanted - upper.length, lower.length - (pieces.length > 4 ? 2 : 0));
  upper.push(...lower.splice(0, Math.max(0, spare)));
  if (lower.length === 1) {
    upper.push(...lower);
    lower = [];
  }
  return { upper, lower: lowerOrder(lower) };
}

/** Largest at the left, then dark and light in turn, smallest at the right. */
function lowerOrder(pieces: readonly HangPiece[]): HangPiece[] {
  const bySize = [...pieces].sort(
    (a, b) => areaWeight(b) * aspectOf(b) - areaWeight(a) * aspectOf(a) || (a.id < b.id ? -1 : 1),
  );
  if (bySize.length < 3) return bySize;
  const first = bySize[0] as HangPiece;
  const last = bySize.at(-1) as HangPiece;
  const middle = bySize
    .slice(1, -1)
    .sort((a, b) => a.lightness - b.lightness || (a.id < b.id ? -1 : 1));
  const out: HangPiece[] = [first];
  let dark = first.lightness >= 55;
  while (middle.length > 0) {
    out.push(dark ? (middle.shift() as HangPiece) : (middle.pop() as HangPiece));
    dark = !dark;
  }
  return [...out, last];
}

/** Widths from area and aspect, scaled so that they and the gaps fill the field; heights follow, none above `top`. */
function spread(row: readonly HangPiece[], field: Field, top: number, least: number): Sized[] {
  const area = field.width * field.height;
  const raw = row.map((p) => Math.sqrt(areaWeight(p) * area * aspectOf(p)));
  const room = field.width - GAP_MM * (row.length - 1);
  const scale = room / raw.reduce((a, b) => a + b, 0);
  const widths = raw.map((w, at) => {
    const piece = row[at] as HangPiece;
    const band =
      piece.look === "stripe" && piece.repeatOnPaperMm && piece.repeatOnPaperMm <= 60
        ? 0.87 * piece.repeatOnPaperMm
        : 0;
    return Math.max(least, band, w * scale);
  });
  const over = widths.reduce((a, b) => a + b, 0) - room;
  if (over > 0.01) {
    // What the narrow ones were given comes off the wide ones, in proportion to what they have to spare.
    const spare = widths.map((w) => Math.max(0, w - least * 1.3));
    const sum = spare.reduce((a, b) => a + b, 0);
    for (const [at, s] of spare.entries())
      widths[at] = (widths[at] as number) - (sum > 0 ? (over * s) / sum : over / widths.length);
  }
  return row.map((piece, at) => {
    const width = widths[at] as number;
    return {
      piece,
      width,
      height: Math.min(width / aspectOf(piece), top * field.height),
    };
  });
}

/** No two neighbours nearly equal in both ways: the smaller one's height gives way by an eighth. */
function unequal(row: Sized[]): void {
  for (let at = 1; at < row.length; at++) {
    const a = row[at - 1] as Sized;
    const b = row[at] as Sized;
    const near = (p: number, q: number): boolean => Math.abs(p - q) / Math.max(p, q) < 0.08;
    if (near(a.width, b.width) && near(a.height, b.height)) {
      const smaller = areaWeight(a.piece) <= areaWeight(b.piece) ? a : b;
      smaller.height *= 0.86;
    }
  }
}

/** Cloth is cut by the length: the main cloth grows until the field is well used; a stripe and a plain beside it follow. */
function lengthen(upper: Sized[], available: number): void {
  const main = upper.find((s) => s.piece.role === "main");
  const tallest = Math.max(...upper.map((s) => s.height));
  if (!main) return;
  if (tallest < available)
    main.height = Math.max(main.height, Math.min(available, main.width / 0.52));
  for (const s of upper) {
    // An anchor stands lower than the main cloth, so that the cloth is seen first.
    if (s.piece.role === "anchor") s.height = Math.min(s.height, main.height * 0.88);
    if (s === main || s.piece.ownAspect !== null) continue;
    const share = s.piece.look === "stripe" ? 0.84 : s.piece.role === "plain" ? 0.62 : 0.7;
    const limit = s.piece.look === "stripe" ? s.width / 0.3 : s.width / 0.5;
    s.height = Math.max(s.height, Math.min(main.height * share, limit));
  }
}

/**
 * Hangs the mix on a datum: the upper row stands on it (feet level, tops ragged), captions hang beneath, the lower row hangs below
 * (tops level, feet ragged). The stack stands on the foot of the field, so that all spare height is above, where the title lives.
 * Deterministic; two to twelve pieces. Millimetres.
 */
export function hang(
  pieces: readonly HangPiece[],
  field: Field,
  title: { readonly width: number; readonly height: number } = { width: 0, height: 0 },
): HungPiece[] {
  const { upper, lower } = rows(pieces);
  const low = spread(lower, field, LOWER_TOP, LEAST_WIDTH);
  unequal(low);
  const lowest = low.reduce((a, s) => Math.max(a, s.height), 0);
  const lowerBand = low.length > 0 ? lowest + CAPTION_MM : 0;
  const high = spread(upper, field, UPPER_TOP, upper.length > 3 ? LEAST_WIDTH : 30);
  if (upper.length < 3) for (const s of high) s.width = Math.min(s.width, field.width * 0.46);
  lengthen(high, FILL * field.height - lowerBand - CAPTION_MM);
  unequal(high);
  const datum = field.height - lowerBand - CAPTION_MM;
  // The title's room is kept free over whatever stands below it.
  let left = 0;
  for (const s of high) {
    s.height = Math.min(s.height, left < title.width ? datum - title.height : datum);
    left += s.width + GAP_MM;
  }
  const out: HungPiece[] = [];
  let x = 0;
  for (const s of high) {
    out.push({
      id: s.piece.id,
      x,
      y: datum - s.height,
      width: s.width,
      height: s.height,
      row: "upper",
    });
    x += s.width + GAP_MM;
  }
  x = 0;
  for (const s of low) {
    out.push({
      id: s.piece.id,
      x,
      y: datum + CAPTION_MM,
      width: s.width,
      height: s.height,
      row: "lower",
    });
    x += s.width + GAP_MM;
  }
  return out;
}
