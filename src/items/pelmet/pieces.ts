import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { layerCuts, layersByHandbook } from "../common/board/boardLayers.ts";
import { heightFigures, hookTapeNeed, lowerTrimNeeds } from "../common/board/boardNeeds.ts";
import { boughtEach, boughtLength } from "../common/boughtLength.ts";
import { isPatterned } from "../common/join/centredMotif.ts";
import { acrossCuts } from "../common/join/joinedAcross.ts";
import { sidewaysAcross } from "../common/join/sideways.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import { weltCut } from "../common/welt/edgeWelt.ts";
import { cordNeed } from "../common/welt/welt.ts";
import type {
  AcrossMatch,
  AlongMatch,
  ItemContext,
  ItemCut,
  Made,
  MaterialNeed,
} from "../itemKind.ts";
import { type PelmetPlan, planPelmet } from "./plan.ts";
import type { PelmetFields } from "./schema.ts";

export interface PelmetMade extends Made {
  readonly plan: PelmetPlan | null;
}

/** A stiff pelmet: cut = span and depth with their turnings, whole width in the middle, motif centred; cuts go up to whole repeats. */
export function makePelmet(fields: PelmetFields, context: ItemContext): PelmetMade {
  const notes = newNotes();
  const plan = planPelmet(fields, context, notes);
  const shared = { ...noted(notes, ["fire", "heavy-hanging"]), plan };
  if (plan === null) {
    return { ...NOTHING_CUT, ...shared };
  }
  const run = plan.board.span.mm.mul(plan.count);
  return {
    figures: figuresOf(plan),
    cuts: cutsOf(plan, context),
    materials: materialsOf(fields, plan, context),
    handbook: [
      { cloth: plan.cloth.id, length: plan.handbook.total },
      ...layersByHandbook(plan.layers, plan.count),
      ...(plan.welt ? [{ cloth: plan.welt.cloth, length: plan.welt.reserve.height }] : []),
    ],
    makingCounts: {
      item: new Fraction(plan.count),
      width: new Fraction(plan.strips.widths * plan.count),
      metre: run.div(1000),
      yard: run.div(new Fraction("914.4")),
    },
    ...shared,
  };
}

function cutsOf(plan: PelmetPlan, context: ItemContext): ItemCut[] {
  const p = (length: Length) => printLength(length, context.units);
  const { cloth, count, cutWidth, cutHeight, edge } = plan;
  const because = `${p(plan.board.span)} span + 2 × ${p(plan.endTurn)}, by ${p(edge.deepest)} depth + ${p(plan.topTurn)} top + ${p(plan.bottomTurn)} bottom`;
  const repeat = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat : null;
  const layers = layerCuts(plan.layers, count);
  const welt = plan.welt ? [weltCut(plan.welt, context)] : [];
  if (plan.railroaded) {
    return [
      {
        piece: "pelmet, run sideways",
        surface: "face",
        cloth: cloth.id,
        // As it lies: the depth across the cloth, the span along it.
        width: cutHeight,
        height: cutWidth,
        count,
        mayTurn: false,
        across: sidewaysAcross(cloth, cutHeight),
        along: { how: "free" },
        because: `${because}; cloth run sideways`,
      },
      ...layers,
      ...welt,
    ];
  }
  // The middle of the motif stands in the middle of the shortest depth, where the eye looks for it.
  const aboveFoot = edge.deepest.minus(edge.shortest.dividedBy(2)).plus(plan.bottomTurn);
  const joined = (fromMiddle: number) => (plan.shifts ? fromMiddle % 2 : 0);
  const along = (fromMiddle: number): AlongMatch =>
    repeat ? { how: "motif-at", aboveFoot, joined: joined(fromMiddle) } : { how: "free" };
  const across: AcrossMatch = plan.motifCentred
    ? { how: "motif-at", fromLeft: cutWidth.dividedBy(2) }
    : { how: "free" };
  const face = acrossCuts({
    piece: "pelmet",
    surface: "face",
    cloth: cloth.id,
    strips: plan.strips,
    cutWidth,
    usableWidth: plan.usableWidth,
    height: cutHeight,
    count,
    across,
    mayTurn: repeat === null && cloth.mayTurn,
    patterned: isPatterned(cloth),
    along,
    because,
  });
  return [...face, ...layers, ...welt];
}

function materialsOf(fields: PelmetFields, plan: PelmetPlan, context: ItemContext): MaterialNeed[] {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const { board, count, edge, stiffening } = plan;
  const needs: MaterialNeed[] = [];
  if (stiffening === "buckram") {
    needs.push(
      boughtLength(`pelmet buckram, ${p(edge.deepest)} deep`, board.span.times(count), units),
    );
    // A bed brings its own tester.
    if (!board.returnEach.isZero() && !board.hangsOn)
      needs.push(
        boughtEach(
          "pelmet board",
          ` of ${printSize([board.length, board.returnEach], units)}`,
          count,
        ),
      );
    needs.push(hookTapeNeed(board, count, units));
  } else {
    needs.push(
      boughtEach(
        "thin board",
        ` of ${printSize([board.length, edge.deepest], units)}, front`,
        count,
      ),
    );
    if (!board.returnEach.isZero())
      needs.push(
        boughtEach(
          "thin board",
          ` of ${printSize([board.returnEach, edge.deepest], units)}, return`,
          2 * count,
        ),
        boughtEach(
          "board",
          ` of ${printSize([board.length, board.returnEach], units)}, top`,
          count,
        ),
      );
  }
  if (plan.welt) needs.push(cordNeed(plan.welt.total, units));
  needs.push(...lowerTrimNeeds(fields.trim, plan.lowerRun, count, context));
  return needs;
}

function figuresOf(plan: PelmetPlan): Record<string, number> {
  const { board, edge, strips, handbook } = plan;
  return {
    pelmets: plan.count,
    widthMm: board.length.toMm(),
    returnMm: board.returnEach.toMm(),
    projectionMm: board.returnEach.toMm(),
    spanMm: board.span.toMm(),
    depthMm: edge.shortest.toMm(),
    deepestMm: edge.deepest.toMm(),
    ...(edge.radiusMm === null ? {} : { radiusMm: edge.radiusMm }),
    lowerEdgeMm: plan.lowerRun.toMm(),
    cutWidthMm: plan.cutWidth.toMm(),
    plainCutLengthMm: plan.cutHeight.toMm(),
    cutLengthMm: handbook.cutLength.toMm(),
    widths: strips.widths,
    joins: strips.joins,
    ...(strips.strip ? { stripMm: strips.strip.toMm() } : {}),
    ...(plan.welt ? { weltMm: plan.welt.total.toMm() } : {}),
    ...heightFigures(board, edge.deepest),
  };
}
