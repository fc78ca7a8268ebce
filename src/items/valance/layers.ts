import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Board } from "../common/board/boardAtWindow.ts";
import { type BoardLayer, boardLayers } from "../common/board/boardLayers.ts";
import type { LowerEdge } from "../common/board/lowerEdge.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { ValanceFields } from "./schema.ts";

/** What lies behind the face is cut by. */
export interface BehindValance {
  readonly board: Board;
  readonly edge: LowerEdge;
  /** Joined, without its side hems. */
  readonly flat: Length;
  readonly join: Length;
}

/** A lining with its turnings, ending inside the ends and above the hem; an interlining edge to edge inside the turnings. */
export function valanceLayers(
  fields: ValanceFields,
  { board, edge, flat, join }: BehindValance,
  context: ItemContext,
  notes: Notes,
): BoardLayer[] {
  const p = (length: Length) => printLength(length, context.units);
  const unknown = "its widths cannot be counted";
  const interlining = () => ({
    width: flat,
    height: edge.deepest,
    because: `${p(flat)} by ${p(edge.deepest)}, inside the turnings`,
  });
  /** A shaped edge is lined to the edge: cut like the face, and sewn to it along the curve. */
  const toTheEdge = () => {
    const [inside, turn, seam] = [
      context.length("lining-in"),
      context.length("lining-turn"),
      context.length("shaped-seam"),
    ];
    return {
      width: flat.minus(inside.times(2)).plus(turn.times(2)),
      height: edge.deepest.plus(turn).plus(seam),
      because: `${p(flat)} − 2 × ${p(inside)} + 2 × ${p(turn)} turns, by ${p(edge.deepest)} + ${p(turn)} top + ${p(seam)} seam along the edge`,
    };
  };
  const lining = () => {
    if (edge.arcs > 0) return toTheEdge();
    const [inside, up, turn] = [
      context.length("lining-in"),
      context.length("lining-up"),
      context.length("lining-turn"),
    ];
    return {
      width: flat.minus(inside.times(2)).plus(turn.times(2)),
      height: board.depth.minus(up).plus(turn.times(2)),
      because: `${p(flat)} − 2 × ${p(inside)} + 2 × ${p(turn)} turns, by ${p(board.depth)} − ${p(up)} + 2 × ${p(turn)} top and hem`,
    };
  };
  return boardLayers(
    [
      {
        key: "interlining",
        surface: "interlining",
        cloth: fields.interlining,
        unknown,
        size: interlining,
      },
      { key: "lining", surface: "lining", cloth: fields.lining, unknown, size: lining },
    ],
    join,
    context,
    notes,
  );
}
