import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type Board, boardAtWindow } from "../common/board/boardAtWindow.ts";
import { type BoardLayer, boardLayers } from "../common/board/boardLayers.ts";
import { type LowerEdge, lowerEdge } from "../common/board/lowerEdge.ts";
import { finestStep } from "../common/finestStep.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import { clothWidth, narrowerThanJoins } from "../common/join/clothWidth.ts";
import { planStrips, type Strips } from "../common/join/joinStrips.ts";
import { matchedTurning } from "../common/join/matchedTurning.ts";
import { motifWhereQuestion } from "../common/join/motifFaults.ts";
import type { HandbookCut } from "../common/join/selvedgeMatch.ts";
import { sideStripsWorking } from "../common/join/sideStrips.ts";
import { sidewaysQuestion, tooLongForSideways } from "../common/join/sideways.ts";
import { stripsCentred } from "../common/join/stripsCentred.ts";
import { widthsByHandbook } from "../common/join/widthsByHandbook.ts";
import type { Notes } from "../common/notes.ts";
import { type EdgeWelt, edgeWelt, weltWorking } from "../common/welt/edgeWelt.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { PelmetFields } from "./schema.ts";

/** Every size that the drawing and the sheet of a pelmet need. */
export interface PelmetPlan {
  readonly board: Board;
  readonly edge: LowerEdge;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly join: Length;
  readonly topTurn: Length;
  readonly bottomTurn: Length;
  readonly endTurn: Length;
  readonly cutWidth: Length;
  readonly cutHeight: Length;
  readonly strips: Strips;
  readonly railroaded: boolean;
  readonly shifts: boolean;
  readonly motifCentred: boolean;
  readonly handbook: HandbookCut;
  readonly layers: readonly BoardLayer[];
  readonly stiffening: "buckram" | "board";
  /** Along the lower edge, front and returns, up to what can be marked. */
  readonly lowerRun: Length;
  readonly welt: EdgeWelt | null;
  readonly count: number;
}

/**
 * Plans a pelmet: "coverage over usable width, with the joins taken off" (The Encyclopaedia of Curtains, p. 117), a whole width in
 * the middle and equal strips beside it. Null, with a diagnostic, where something essential is not known.
 */
export function planPelmet(
  fields: PelmetFields,
  context: ItemContext,
  notes: Notes,
): PelmetPlan | null {
  const count = fields.count ?? 1;
  const board = boardAtWindow("pelmet", fields, context, notes);
  const edge = board && lowerEdge(fields, board.length, board.depth, "pelmet", context, notes);
  const cloth = context.cloth(fields.cloth);
  const unknown = "it cannot be said whether this pelmet needs a join";
  const usableWidth = clothWidth(cloth, "cloth", unknown, context, notes);
  if (!board || !edge || cloth === null || usableWidth === null) return null;
  const turnings: Turnings = {
    topTurn: context.length("top-turn"),
    bottomTurn: context.length("bottom-turn"),
    endTurn: context.length("end-turn"),
  };
  const seam = context.length("join");
  const join = matchedTurning(cloth, seam);
  const { cutWidth, cutHeight } = frontCut(board, edge, turnings, context, notes);
  const railroaded = fields.railroad === true;
  const front: FrontCut = { cloth, usableWidth, join, railroaded, cutWidth, cutHeight };
  const strips = stripsOf(fields, front, context, notes);
  if (strips === null) return null;
  const { handbook, shifts } = handbookOf(front, strips, count, context, notes);
  const motifCentred = isCentred(fields, front, strips, context, notes);
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the pelmet?`);
  if (!fields.stiffening)
    notes.working.push({
      what: "Stiffening",
      sum: "nothing was said",
      result: "pelmet buckram",
      rounded: null,
    });
  const { lowerRun, welt } = weltOf(fields, board, edge, count, context, notes);
  return {
    board,
    edge,
    ...turnings,
    ...front,
    strips,
    shifts,
    motifCentred,
    handbook,
    layers: layersOf(fields, board, edge, seam, context, notes),
    stiffening: fields.stiffening ?? "buckram",
    lowerRun,
    welt,
    count,
  };
}

/** What is turned over the stiffening. */
type Turnings = Pick<PelmetPlan, "topTurn" | "bottomTurn" | "endTurn">;

/** The face as cut, and the cloth that it is cut from. */
type FrontCut = Pick<
  PelmetPlan,
  "cloth" | "usableWidth" | "join" | "railroaded" | "cutWidth" | "cutHeight"
>;

/** Span and depth, with what is turned over at each edge. */
function frontCut(
  board: Board,
  edge: LowerEdge,
  { topTurn, bottomTurn, endTurn }: Turnings,
  context: ItemContext,
  notes: Notes,
): Pick<PelmetPlan, "cutWidth" | "cutHeight"> {
  const p = (length: Length) => printLength(length, context.units);
  const cutWidth = board.span.plus(endTurn.times(2));
  const cutHeight = edge.deepest.plus(topTurn).plus(bottomTurn);
  notes.working.push(
    {
      what: "Cut width",
      sum: `${p(board.span)} span + 2 × ${p(endTurn)} turned round the ends`,
      result: p(cutWidth),
      rounded: null,
    },
    {
      what: "Cut height",
      sum: `${p(edge.deepest)} depth + ${p(topTurn)} top + ${p(bottomTurn)} bottom`,
      result: p(cutHeight),
      rounded: null,
    },
  );
  return { cutWidth, cutHeight };
}

/**
 * How the cut width is made of the cloth: one length run sideways, or a whole width in the middle and strips beside it. Null, with a
 * diagnostic, where the cloth is too narrow for either.
 */
function stripsOf(
  fields: PelmetFields,
  { cloth, usableWidth, join, railroaded, cutWidth, cutHeight }: FrontCut,
  context: ItemContext,
  notes: Notes,
): Strips | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  if (railroaded && cutHeight.isMoreThan(usableWidth)) {
    const cut = { length: cutHeight, words: "high, this pelmet does" };
    notes.diagnostics.push(tooLongForSideways(cut, cloth, usableWidth, context));
    return null;
  }
  if (!railroaded && !usableWidth.isMoreThan(join.times(2))) {
    narrowerThanJoins(cloth, usableWidth, join, context, notes);
    return null;
  }
  const strips: Strips = railroaded
    ? { wholes: 0, strip: null, widths: 1, joins: 0, middle: cutWidth, motif: null }
    : fields.motif === "as-it-falls"
      ? planStrips(cutWidth, usableWidth, join)
      : stripsCentred(cutWidth, usableWidth, join, cloth);
  notes.working.push(...sideStripsWorking(strips, cutWidth, usableWidth, join, units));
  if (strips.strip && cloth.mayTurn)
    notes.questions.push(
      `May ${cloth.name} be run sideways (railroad: yes)? The pelmet would then have no joins, from ${p(cutWidth)} of length.`,
    );
  const question = railroaded ? sidewaysQuestion(cloth) : null;
  if (question) notes.questions.push(question);
  return strips;
}

/** Whether a motif stands in the middle of the front; where it is wished and none can, the question of what is wanted instead. */
function isCentred(
  fields: PelmetFields,
  { cloth, usableWidth, railroaded, cutWidth, cutHeight }: FrontCut,
  strips: Strips,
  context: ItemContext,
  notes: Notes,
): boolean {
  if (fields.motif === "as-it-falls" || railroaded || !hasMotif(cloth)) return false;
  if (strips.motif) return true;
  const across = cloth.repeat?.across;
  // Joined round a whole width, its own motifs stand where the selvedges put them.
  const centred = strips.joins === 0 && centredPlace(cloth, cutWidth, cutHeight).fits;
  if (centred || !across) return centred;
  if (strips.joins === 0) {
    notes.questions.push(motifWhereQuestion(cloth, cutWidth, "on the pelmet", context.units));
    return false;
  }
  const first = cloth.repeat?.fromSelvedge ?? across.dividedBy(2);
  const off = usableWidth.dividedBy(2).minus(first).over(across).mod(1);
  if (off.compare(0) !== 0)
    notes.questions.push(
      `No motif of ${cloth.name} stands in the middle of its width: is a gap in the middle of the pelmet wanted, or a narrower middle piece with a motif in it?`,
    );
  return false;
}

/** The run of the lower edge, front and returns, and the welt along it where one is asked for. */
function weltOf(
  fields: PelmetFields,
  board: Board,
  edge: LowerEdge,
  count: number,
  context: ItemContext,
  notes: Notes,
): Pick<PelmetPlan, "lowerRun" | "welt"> {
  const { units } = context;
  const marked = finestStep(units);
  const lowerRun = Length.mm(edge.runMm.toFixed(3)).plus(board.returnEach.times(2)).upTo(marked);
  const both = fields.edge?.where === "both";
  const edges = both ? lowerRun.plus(board.span) : lowerRun;
  const welt = edgeWelt(
    fields,
    context,
    fields.edge ? context.length("seam") : Length.zero,
    edges,
    both ? 2 : 1,
  );
  const p = (length: Length) => printLength(length, units);
  const lower = `${p(Length.mm(edge.runMm.toFixed(3)))} lower edge${board.returnEach.isZero() ? "" : ` + 2 × ${p(board.returnEach)} returns`}`;
  if (welt)
    notes.working.push(
      ...weltWorking(welt, count, context, both ? `${lower} + ${p(board.span)} upper edge` : lower),
    );
  return { lowerRun, welt };
}

/** What the handbook makes of the face: cloth that runs sideways is taken by its length alone. */
function handbookOf(
  { cloth, railroaded, cutWidth, cutHeight }: FrontCut,
  strips: Strips,
  count: number,
  context: ItemContext,
  notes: Notes,
): Pick<PelmetPlan, "handbook" | "shifts"> {
  const { units } = context;
  if (!railroaded) {
    const cuts = strips.widths * count;
    const ask = { plain: cutHeight, called: "Cut height", cuts, joined: strips.joins > 0 };
    return widthsByHandbook(ask, cloth, units, notes);
  }
  const total = cutWidth.times(count);
  notes.working.push({
    what: "By the handbook",
    sum: `${count} × ${printLength(cutWidth, units)}, cloth run sideways`,
    result: printLength(total, units),
    rounded: null,
  });
  return { handbook: { cutLength: cutWidth, repeats: null, total }, shifts: false };
}

/** A padding cut to the stiffening, a lining with turnings on every side. */
function layersOf(
  fields: PelmetFields,
  board: Board,
  edge: LowerEdge,
  join: Length,
  context: ItemContext,
  notes: Notes,
): BoardLayer[] {
  const p = (length: Length) => printLength(length, context.units);
  const size = `${p(board.span)} × ${p(edge.deepest)}`;
  const unknown = "its joins cannot be planned";
  const padding = () => ({
    width: board.span,
    height: edge.deepest,
    because: `${size}, cut to the stiffening`,
  });
  const lining = () => {
    const turn = context.length("lining-turn");
    return {
      width: board.span.plus(turn.times(2)),
      height: edge.deepest.plus(turn.times(2)),
      because: `${size} + 2 × ${p(turn)} turnings each way`,
    };
  };
  return boardLayers(
    [
      { key: "padding", surface: "interlining", cloth: fields.padding, unknown, size: padding },
      { key: "lining", surface: "lining", cloth: fields.lining, unknown, size: lining },
    ],
    join,
    context,
    notes,
  );
}
