import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type Board, boardAtWindow } from "../common/board/boardAtWindow.ts";
import { type BoardLayer, boardLayers } from "../common/board/boardLayers.ts";
import { type LowerEdge, lowerEdge } from "../common/board/lowerEdge.ts";
import { finestStep } from "../common/finestStep.ts";
import { centredPlace, hasMotif } from "../common/join/centredMotif.ts";
import { clothWidth, narrowerThanJoins } from "../common/join/clothWidth.ts";
import { planStrips, type Strips } from "../common/join/joinStrips.ts";
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
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  const board = boardAtWindow("pelmet", fields, context, notes);
  const edge = board && lowerEdge(fields, board.length, board.depth, "pelmet", context, notes);
  const cloth = context.cloth(fields.cloth);
  const usableWidth = clothWidth(
    cloth,
    "cloth",
    "it cannot be said whether this pelmet needs a join",
    context,
    notes,
  );
  if (!board || !edge || cloth === null || usableWidth === null) return null;
  const [topTurn, bottomTurn, endTurn, join] = [
    context.length("top-turn"),
    context.length("bottom-turn"),
    context.length("end-turn"),
    context.length("join"),
  ];
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
  const railroaded = fields.railroad === true;
  const strips = stripsOf(fields, cloth, usableWidth, cutWidth, cutHeight, join, context, notes);
  if (strips === null) return null;
  const { handbook, shifts } = railroaded
    ? { handbook: sidewaysByHandbook(cutWidth, count, p, notes), shifts: false }
    : widthsByHandbook(
        {
          plain: cutHeight,
          called: "Cut height",
          cuts: strips.widths * count,
          joined: strips.joins > 0,
        },
        cloth,
        units,
        notes,
      );

  const motifCentred =
    fields.motif !== "as-it-falls" &&
    !railroaded &&
    hasMotif(cloth) &&
    motifInMiddle(cloth, strips, usableWidth, cutWidth, cutHeight, p, notes);
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the pelmet?`);
  const stiffening = fields.stiffening ?? "buckram";
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
    cloth,
    usableWidth,
    join,
    topTurn,
    bottomTurn,
    endTurn,
    cutWidth,
    cutHeight,
    strips,
    railroaded,
    shifts,
    motifCentred,
    handbook,
    layers: layersOf(fields, board, edge, join, context, notes),
    stiffening,
    lowerRun,
    welt,
    count,
  };
}

/**
 * How the cut width is made of the cloth: one length run sideways, or a whole width in the middle and strips beside it. Null, with a
 * diagnostic, where the cloth is too narrow for either.
 */
function stripsOf(
  fields: PelmetFields,
  cloth: ClothFacts,
  usableWidth: Length,
  cutWidth: Length,
  cutHeight: Length,
  join: Length,
  context: ItemContext,
  notes: Notes,
): Strips | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const railroaded = fields.railroad === true;
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
  if (strips.strip) {
    if (cloth.mayTurn) {
      notes.questions.push(
        `May ${cloth.name} be run sideways (railroad: yes)? The pelmet would then have no joins, from ${p(cutWidth)} of length.`,
      );
    }
  }
  const question = railroaded ? sidewaysQuestion(cloth) : null;
  if (question) notes.questions.push(question);
  return strips;
}

/** Whether a motif can stand in the middle of the front; where none can, the question of what is wanted instead. */
function motifInMiddle(
  cloth: ClothFacts,
  strips: Strips,
  usableWidth: Length,
  cutWidth: Length,
  cutHeight: Length,
  p: (length: Length) => string,
  notes: Notes,
): boolean {
  if (strips.motif) return true;
  // Joined round a whole width, its own motifs stand where the selvedges put them.
  const motifCentred = strips.joins === 0 && centredPlace(cloth, cutWidth, cutHeight).fits;
  if (strips.joins > 0 && cloth.repeat?.across) {
    const middles = usableWidth.dividedBy(2);
    const first = cloth.repeat.fromSelvedge ?? cloth.repeat.across.dividedBy(2);
    const off = middles.minus(first).over(cloth.repeat.across).mod(1);
    if (off.compare(0) !== 0) {
      notes.questions.push(
        `No motif of ${cloth.name} stands in the middle of its width: is a gap in the middle of the pelmet wanted, or a narrower middle piece with a motif in it?`,
      );
    }
  } else if (!motifCentred && cloth.repeat?.across) {
    notes.questions.push(
      `No motif of ${cloth.name} can stand in the middle of a piece ${p(cutWidth)} wide: where on the pelmet is the motif wanted?`,
    );
  }
  return motifCentred;
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

/** Cloth that runs sideways is taken by its length alone. */
function sidewaysByHandbook(
  cutWidth: Length,
  count: number,
  p: (length: Length) => string,
  notes: Notes,
): HandbookCut {
  const total = cutWidth.times(count);
  notes.working.push({
    what: "By the handbook",
    sum: `${count} × ${p(cutWidth)}, cloth run sideways`,
    result: p(total),
    rounded: null,
  });
  return { cutLength: cutWidth, repeats: null, total };
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
