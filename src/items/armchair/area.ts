import type { SeenSurface } from "../itemKind.ts";
import type { ArmchairMade } from "./pieces.ts";
import type { ArmchairFields } from "./schema.ts";

/** Pieces that nobody sees in a room: under the cushion, or against the wall. */
const HIDDEN: ReadonlySet<string> = new Set(["cushion-bottom", "outside-back"]);

/** Cloth seen of the chairs: the finished pieces, or, while none are measured, front, seat and two sides of the overall box. */
export function armchairSeen(fields: ArmchairFields, made: ArmchairMade): SeenSurface[] {
  const plain = { colour: null, object: null };
  const sums = new Map<string, { cloth: string; areaMm2: number }>();
  const add = (surface: string, cloth: string, areaMm2: number) => {
    const before = sums.get(surface)?.areaMm2 ?? 0;
    sums.set(surface, { cloth, areaMm2: before + areaMm2 });
  };
  for (const piece of made.pieces) {
    if (HIDDEN.has(piece.piece)) continue;
    add(
      piece.surface,
      piece.cloth,
      piece.finished[0].toMm() * piece.finished[1].toMm() * piece.count * made.count,
    );
  }
  if (made.pieces.length === 0) {
    const [width, depth, height] = made.size.map((l) => l.toMm()) as [number, number, number];
    // Arms and back fill about seven tenths of the sides' box (common practice, no source).
    add(
      "cover",
      fields.cloth,
      (width * height + width * depth * 0.6 + 2 * depth * height * 0.7) * made.count,
    );
  }
  if (made.welt) add("welt", made.welt.cloth, made.welt.length.toMm() * 8);
  return [...sums].map(([surface, s]) => ({ surface, ...plain, ...s }));
}
