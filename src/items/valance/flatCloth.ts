import type Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Board } from "../common/board/boardAtWindow.ts";
import { type LowerEdge, onFlatCloth } from "../common/board/lowerEdge.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { ValanceFields } from "./schema.ts";

/** The flat cloth of a valance, before it is gathered or pleated. */
export interface FlatCloth {
  /** Joined, without its side hems. */
  readonly flat: Length;
  /** Of the front alone, and the lower edge on it. */
  readonly flatFront: Length;
  readonly flatEdge: LowerEdge;
  readonly cutWidth: Length;
  readonly cutHeight: Length;
}

/** What is turned at the edges of a valance. */
export interface ValanceTurnings {
  /** The whole lower hem; of a shaped edge the seam along it. */
  readonly hem: Length;
  readonly headingTurn: Length;
  readonly sideHem: Length;
}

/** Span times fullness; box pleats lie on the front alone, and its returns stay flat. Side hems, heading and hem on top. */
export function flatCloth(
  fields: ValanceFields,
  board: Board,
  edge: LowerEdge,
  by: ValanceTurnings & { readonly fullness: Fraction },
  context: ItemContext,
  notes: Notes,
): FlatCloth {
  const p = (length: Length) => printLength(length, context.units);
  const { fullness, hem, headingTurn, sideHem } = by;
  // Box pleats lie on the front alone; gathers and pinch pleats go round the ends as well.
  const boxed = fields.heading === "box-pleat";
  const shaped = edge.arcs > 0;
  const returns = board.returnEach.times(2);
  const flat = boxed ? board.length.times(fullness).plus(returns) : board.span.times(fullness);
  const cutWidth = flat.plus(sideHem.times(2));
  const cutHeight = edge.deepest.plus(hem).plus(headingTurn);
  notes.working.push(
    {
      what: "Flat width",
      sum: boxed
        ? `${p(board.length)} front × ${fullness.toString()} fullness + ${p(returns)} returns, flat + 2 × ${p(sideHem)} side hems`
        : `${p(board.span)} × ${fullness.toString()} fullness + 2 × ${p(sideHem)} side hems`,
      result: p(cutWidth),
      rounded: null,
    },
    {
      what: "Cut, without repeat",
      sum: `${p(edge.deepest)} ${shaped ? "depth where it is deepest" : "depth"} + ${p(headingTurn)} heading + ${p(hem)} ${shaped ? "seam" : "hem"}`,
      result: p(cutHeight),
      rounded: null,
    },
  );
  const flatFront = boxed ? flat.minus(returns) : flat.times(board.length.over(board.span));
  const flatEdge = onFlatCloth(edge, flatFront);
  if (flatEdge.radiusMm !== null)
    notes.working.push({
      what: `On the flat cloth, ${edge.line === "arched" ? "the arch" : "each scallop"}`,
      sum: `${p(flatFront)} flat front${edge.arcs > 1 ? ` ÷ ${edge.arcs}` : ""}, ${p(edge.deepest.minus(edge.shortest))} high as it hangs`,
      result: `${p(flatEdge.chord)} wide, radius ${p(Length.mm(flatEdge.radiusMm.toFixed(3)))}`,
      rounded: null,
    });
  return { flat, flatFront, flatEdge, cutWidth, cutHeight };
}
