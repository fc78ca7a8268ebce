import type { Length } from "../../../units/length.ts";
import type { ClothFacts } from "../../itemKind.ts";
import { centredJoin } from "./centredJoin.ts";
import { middleOfWidth } from "./joinPiece.ts";
import { planStrips, type Strips } from "./joinStrips.ts";

/**
 * The strips of a front whose motif is to stand in its middle. Where it must be joined and no motif stands in the middle of the
 * width, its middle is the widest with a motif there; where so little would be left of it that it is asked instead, a whole width.
 */
export function stripsCentred(
  cutWidth: Length,
  usableWidth: Length,
  join: Length,
  cloth: ClothFacts,
): Strips {
  const plain = planStrips(cutWidth, usableWidth, join);
  if (plain.joins === 0 || middleOfWidth(cloth).motif) return plain;
  const parts = centredJoin(cutWidth, cloth, join, "both-sides");
  const [left, middle, right] = parts ?? [];
  if (!left?.motifFromLeft || !middle?.motifFromLeft || !right?.motifFromLeft) return plain;
  return {
    wholes: 1,
    strip: left.width,
    widths: left.width.times(2).isMoreThan(usableWidth) ? 3 : 2,
    joins: 2,
    middle: middle.width,
    motif: { left: left.motifFromLeft, middle: middle.motifFromLeft, right: right.motifFromLeft },
  };
}
