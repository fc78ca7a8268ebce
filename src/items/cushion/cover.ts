import type { Length } from "../../units/length.ts";
import type { JoinedPart } from "../common/join/joinedPart.ts";
import { joinPiece } from "../common/join/joinPiece.ts";
import { matchedTurning } from "../common/join/matchedTurning.ts";
import type { ItemContext } from "../itemKind.ts";
import { backOf, type CushionBack } from "./back.ts";
import { type Boxing, boxingOf, type PlateEdges, rectangleEdges } from "./boxing.ts";
import { type Closure, closureOf } from "./closure.ts";
import type { CushionFields } from "./schema.ts";
import { type CushionSizes, cushionSizes } from "./sizes.ts";

/** The cover of a cushion as it is to be made, before any of it is cut. */
export interface CushionCover {
  readonly sizes: CushionSizes;
  /** The edge that welt and boxing run along. */
  readonly plate: PlateEdges;
  readonly closure: Closure;
  readonly boxing: Boxing | null;
  readonly joins: CushionJoins;
  readonly back: CushionBack;
}

/** The parts of a piece so wide on this cloth, or null where it is cut from one width; `centred` asks for a motif in its middle. */
export type CushionJoins = (
  cloth: string,
  width: Length,
  centred: boolean,
) => readonly JoinedPart[] | null;

/** Sizes, closure, boxing, joins and back; `shape` tells the edges of a plate that is no rectangle. */
export function coverOf(
  fields: CushionFields,
  context: ItemContext,
  shape?: PlateEdges,
): CushionCover {
  const sizes = cushionSizes(fields, context);
  const plate = shape ?? rectangleEdges(...sizes.outside);
  const closure = closureOf(fields, sizes.form);
  const boxing =
    sizes.form === "box" ? boxingOf(fields, context, sizes.seam, closure === "zip", plate) : null;
  const joins = joinsOf(fields, sizes, context);
  return { sizes, plate, closure, boxing, joins, back: backOf(sizes, closure, context) };
}

/** Joined where it is wider than its cloth and its `join` says how; never sideways, and never a bolster. */
function joinsOf(fields: CushionFields, sizes: CushionSizes, context: ItemContext): CushionJoins {
  const turning = context.length("join-turning");
  return (id, width, centred) => {
    const facts = context.cloth(id);
    const usable = facts?.usableWidth;
    if (!usable || !fields.join || sizes.railroad || sizes.bolster) return null;
    if (!width.isMoreThan(usable)) return null;
    const join = matchedTurning(facts, turning);
    return joinPiece(width, usable, join, fields.join, centred ? facts : null);
  };
}
