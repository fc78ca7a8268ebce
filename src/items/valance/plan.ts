import type Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { type Board, boardAtWindow } from "../common/board/boardAtWindow.ts";
import { type BoardLayer, boardLayers } from "../common/board/boardLayers.ts";
import { type LowerEdge, lowerEdge, onFlatCloth } from "../common/board/lowerEdge.ts";
import { clothWidth, narrowerThanJoins } from "../common/join/clothWidth.ts";
import { planStrips, type Strips } from "../common/join/joinStrips.ts";
import type { HandbookCut } from "../common/join/selvedgeMatch.ts";
import { stripSum, wholesWords } from "../common/join/sideStrips.ts";
import { widthsByHandbook } from "../common/join/widthsByHandbook.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext, WorkingLine } from "../itemKind.ts";
import { type ValanceHeading, valanceHeading } from "./heading.ts";
import type { ValanceFields } from "./schema.ts";

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
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  const board = boardAtWindow("valance", fields, context, notes);
  const cloth = context.cloth(fields.cloth);
  const usableWidth = clothWidth(
    cloth,
    "cloth",
    "the widths of this valance cannot be counted",
    context,
    notes,
  );
  if (!board || cloth === null || usableWidth === null) return null;
  const edge = lowerEdge(fields, board.length, board.depth, "valance", context, notes);
  if (!edge) return null;
  const shaped = edge.arcs > 0;
  const [hem, headingTurn, sideHem, join] = [
    context.length(shaped ? "shaped-seam" : "hem"),
    context.length("heading"),
    context.length("side-hem"),
    context.length("join"),
  ];
  if (!usableWidth.isMoreThan(join.times(2))) {
    narrowerThanJoins(cloth, usableWidth, join, context, notes);
    return null;
  }
  const fullness = fullnessOf(fields, context, notes);
  if (fullness === null) return null;
  // Box pleats lie on the front alone; gathers and pinch pleats go round the ends as well.
  const boxed = fields.heading === "box-pleat";
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
  if (shaped && !fields.lining)
    notes.questions.push(
      "A shaped lower edge has no hem: is it lined to the edge, or faced? Neither is reckoned.",
    );
  if (shaped && fields.heading === "box-pleat" && edge.line === "scalloped")
    notes.questions.push("Do the scallops fall on the boxes, one each, or as they come?");
  const strips = planStrips(cutWidth, usableWidth, join);
  notes.working.push(...widthsWorking(strips, cutWidth, usableWidth, join, units));
  const { handbook, shifts, repeatUp } = widthsByHandbook(
    {
      plain: cutHeight,
      called: "Cut length",
      cuts: strips.widths * count,
      joined: strips.joins > 0,
    },
    cloth,
    units,
    notes,
  );
  const heading = valanceHeading(fields.heading, board.length, board.span, flat, context, notes);
  if (!board.depth.isMoreThan(heading.depth)) {
    notes.diagnostics.push(
      diagnostic(
        context.place(fields.depth ? ["depth"] : []),
        "valance-shorter-than-heading",
        `A valance ${p(board.depth)} deep leaves nothing under its heading of ${p(heading.depth)}.`,
        { actual: p(board.depth), hint: "Look at its depth, or at the allowance heading-depth." },
      ),
    );
    return null;
  }
  const lowestMotif = fields["lowest-motif"] ?? null;
  askOfPattern(cloth, repeatUp, lowestMotif, board, p, notes);
  return {
    board,
    cloth,
    usableWidth,
    fullness,
    hem,
    edge,
    flatEdge,
    flatFront,
    headingTurn,
    sideHem,
    join,
    flat,
    cutWidth,
    cutHeight,
    strips,
    shifts,
    heading,
    handbook,
    lowestMotif,
    layers: layersOf(fields, board, edge, flat, join, context, notes),
    count,
  };
}

/** Flat cloth for each length of board. Null, with a diagnostic, where it would not reach round the board. */
function fullnessOf(fields: ValanceFields, context: ItemContext, notes: Notes): Fraction | null {
  const fullness = fields.fullness ?? context.ratio(`fullness-${fields.heading}`);
  if (fullness.compare(1) < 0) {
    notes.diagnostics.push(
      diagnostic(
        context.place(["fullness"]),
        "fullness-under-one",
        `At a fullness of ${fullness.toString()} this valance is narrower than its board.`,
        {
          actual: fullness.toString(),
          expected: "1 or more",
          hint: "2 to 2.5 is usual, 3 for box pleats.",
        },
      ),
    );
    return null;
  }
  return fullness;
}

/** The working of whole widths and the strips at the ends; nothing where one width is enough. */
function widthsWorking(
  strips: Strips,
  cutWidth: Length,
  usableWidth: Length,
  join: Length,
  units: UnitSystem,
): WorkingLine[] {
  if (!strips.strip) return [];
  return [
    {
      what: "Widths",
      sum: `${wholesWords(strips, usableWidth, units)} in the middle; ${stripSum(strips, cutWidth, usableWidth, join, units)} at each end`,
      result: `${strips.widths} widths of cloth; 2 end strips of ${printLength(strips.strip, units)}`,
      rounded: "up to whole widths of cloth",
    },
  ];
}

/** What is still to be asked of a cloth with a pattern or a pile. */
function askOfPattern(
  cloth: ClothFacts,
  repeatUp: Length | null,
  lowestMotif: Length | null,
  board: Board,
  p: (length: Length) => string,
  notes: Notes,
): void {
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

/** A lining with its turnings, ending inside the ends and above the hem; an interlining edge to edge inside the turnings. */
function layersOf(
  fields: ValanceFields,
  board: Board,
  edge: LowerEdge,
  flat: Length,
  join: Length,
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
