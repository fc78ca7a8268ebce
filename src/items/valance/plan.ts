import type Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type Board, boardAtWindow } from "../common/board/boardAtWindow.ts";
import type { BoardLayer } from "../common/board/boardLayers.ts";
import { type LowerEdge, lowerEdge } from "../common/board/lowerEdge.ts";
import { clothWidth, narrowerThanJoins } from "../common/join/clothWidth.ts";
import { planStrips, type Strips } from "../common/join/joinStrips.ts";
import { matchedTurning } from "../common/join/matchedTurning.ts";
import type { HandbookCut } from "../common/join/selvedgeMatch.ts";
import { widthsByHandbook } from "../common/join/widthsByHandbook.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import { flatCloth } from "./flatCloth.ts";
import { type ValanceHeading, valanceHeading } from "./heading.ts";
import { valanceLayers } from "./layers.ts";
import type { ValanceFields } from "./schema.ts";
import { valanceLess, widthsWorking } from "./widths.ts";

/** Every size that the drawing and the sheet of a valance need. */
export interface ValancePlan {
  readonly board: Board;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly fullness: Fraction;
  /** The whole lower hem; of a shaped edge the seam along it. */
  readonly hem: Length;
  /** The lower edge as it hangs, and on the flat cloth of the front before it is gathered or pleated. */
  readonly edge: LowerEdge;
  readonly flatEdge: LowerEdge;
  /** Flat cloth of the front alone. */
  readonly flatFront: Length;
  readonly headingTurn: Length;
  readonly sideHem: Length;
  readonly join: Length;
  /** Joined, without its side hems. */
  readonly flat: Length;
  readonly cutWidth: Length;
  readonly cutHeight: Length;
  readonly strips: Strips;
  readonly shifts: boolean;
  readonly heading: ValanceHeading;
  readonly handbook: HandbookCut;
  readonly lowestMotif: Length | null;
  readonly layers: readonly BoardLayer[];
  readonly count: number;
}

/**
 * "Size its widths like a curtain, measuring round the board including both ends" (The Encyclopaedia of Curtains, p. 116): flat =
 * span × fullness + side hems (box pleats: the front alone, the returns flat), a whole width in the middle. Null, with a diagnostic, where something essential is not known.
 */
export function planValance(
  fields: ValanceFields,
  context: ItemContext,
  notes: Notes,
): ValancePlan | null {
  const { units } = context;
  const count = fields.count ?? 1;
  const board = boardAtWindow("valance", fields, context, notes);
  const cloth = context.cloth(fields.cloth);
  const unknown = "the widths of this valance cannot be counted";
  const usableWidth = clothWidth(cloth, "cloth", unknown, context, notes);
  if (!board || cloth === null || usableWidth === null) return null;
  const edge = lowerEdge(fields, board.length, board.depth, "valance", context, notes);
  if (!edge) return null;
  const turnings = {
    hem: context.length(edge.arcs > 0 ? "shaped-seam" : "hem"),
    headingTurn: context.length("heading"),
    sideHem: context.length("side-hem"),
  };
  const seam = context.length("join");
  const join = matchedTurning(cloth, seam);
  if (!usableWidth.isMoreThan(join.times(2))) {
    narrowerThanJoins(cloth, usableWidth, join, context, notes);
    return null;
  }
  const fullness = fields.fullness ?? context.ratio(`fullness-${fields.heading}`);
  const face = flatCloth(fields, board, edge, { ...turnings, fullness }, context, notes);
  askOfEdge(fields, edge, notes);
  const strips = planStrips(face.cutWidth, usableWidth, join);
  notes.working.push(...widthsWorking(strips, face.cutWidth, usableWidth, join, units));
  const less = valanceLess(fields, board, cloth, { ...face, fullness, usableWidth, join }, strips);
  if (less) notes.questions.push(less);
  const cuts = strips.widths * count;
  const ask = { plain: face.cutHeight, called: "Cut length", cuts, joined: strips.joins > 0 };
  const { handbook, shifts, repeatUp } = widthsByHandbook(ask, cloth, units, notes);
  const heading = valanceHeading(
    fields.heading,
    board.length,
    board.span,
    face.flat,
    context,
    notes,
  );
  if (shorterThanHeading(fields, board, heading, context, notes)) return null;
  const lowestMotif = fields["lowest-motif"] ?? null;
  askOfPattern(cloth, repeatUp, lowestMotif, board, context, notes);
  return {
    board,
    cloth,
    usableWidth,
    fullness,
    ...turnings,
    edge,
    ...face,
    join,
    strips,
    shifts,
    heading,
    handbook,
    lowestMotif,
    layers: valanceLayers(fields, { board, edge, flat: face.flat, join: seam }, context, notes),
    count,
  };
}

/** What a shaped lower edge leaves open. */
function askOfEdge(fields: ValanceFields, edge: LowerEdge, notes: Notes): void {
  if (edge.arcs === 0) return;
  if (!fields.lining)
    notes.questions.push(
      "A shaped lower edge has no hem: is it lined to the edge, or faced? Neither is reckoned.",
    );
  if (fields.heading === "box-pleat" && edge.line === "scalloped")
    notes.questions.push("Do the scallops fall on the boxes, one each, or as they come?");
}

/** True, with a diagnostic, where the heading takes the whole depth. */
function shorterThanHeading(
  fields: ValanceFields,
  { depth }: Board,
  heading: ValanceHeading,
  context: ItemContext,
  notes: Notes,
): boolean {
  if (depth.isMoreThan(heading.depth)) return false;
  const p = (length: Length) => printLength(length, context.units);
  notes.diagnostics.push(
    diagnostic(
      context.place(fields.depth ? ["depth"] : []),
      "valance-shorter-than-heading",
      `A valance ${p(depth)} deep leaves nothing under its heading of ${p(heading.depth)}.`,
      { actual: p(depth), hint: "Look at its depth, or at the allowance heading-depth." },
    ),
  );
  return true;
}

/** What is still to be asked of a cloth with a pattern or a pile. */
function askOfPattern(
  cloth: ClothFacts,
  repeatUp: Length | null,
  lowestMotif: Length | null,
  board: Board,
  context: ItemContext,
  notes: Notes,
): void {
  const p = (length: Length) => printLength(length, context.units);
  if (repeatUp && lowestMotif === null) {
    notes.questions.push(
      "How high above the lower edge does the middle of the lowest whole motif stand? Level across the widths is all that is known.",
    );
  }
  if (repeatUp && board.depth.isLessThan(repeatUp)) {
    notes.questions.push(
      `The valance is ${p(board.depth)} deep, less than the repeat of ${p(repeatUp)}: which part of the pattern is to be seen?`,
    );
  }
  if (cloth.nap)
    notes.questions.push(
      `Does the pile of ${cloth.name} run up or down the valance? It follows the curtains.`,
    );
}
