import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printLength, printSize, type UnitSystem } from "../../units/printLength.ts";
import type { Board } from "../common/board/boardAtWindow.ts";
import { layerCuts, layersByHandbook } from "../common/board/boardLayers.ts";
import { heightFigures, hookTapeNeed, lowerTrimNeeds } from "../common/board/boardNeeds.ts";
import { boughtEach, boughtLength } from "../common/boughtLength.ts";
import { finestStep } from "../common/finestStep.ts";
import { isPatterned } from "../common/join/centredMotif.ts";
import { acrossCuts } from "../common/join/joinedAcross.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import type { AlongMatch, ItemContext, ItemCut, Made, MaterialNeed } from "../itemKind.ts";
import { planValance, type ValancePlan } from "./plan.ts";
import type { ValanceFields } from "./schema.ts";

export interface ValanceMade extends Made {
  readonly plan: ValancePlan | null;
}

/** A soft valance: span × fullness in widths with a whole one in the middle, cuts up to whole repeats, level across the widths. */
export function makeValance(fields: ValanceFields, context: ItemContext): ValanceMade {
  const notes = newNotes();
  const plan = planValance(fields, context, notes);
  const shared = { ...noted(notes, ["fire"]), plan };
  if (plan === null) {
    return { ...NOTHING_CUT, ...shared };
  }
  const widths = plan.strips.widths * plan.count;
  const run = plan.board.span.mm.mul(plan.count);
  return {
    figures: figuresOf(plan),
    cuts: cutsOf(fields, plan, context),
    materials: materialsOf(fields, plan, context),
    handbook: [
      { cloth: plan.cloth.id, length: plan.handbook.total },
      ...layersByHandbook(plan.layers, plan.count),
    ],
    makingCounts: {
      item: new Fraction(plan.count),
      width: new Fraction(widths),
      drop: new Fraction(widths),
      metre: run.div(1000),
      yard: run.div(new Fraction("914.4")),
    },
    ...shared,
  };
}

function cutsOf(fields: ValanceFields, plan: ValancePlan, context: ItemContext): ItemCut[] {
  const p = (length: Length) => printLength(length, context.units);
  const { cloth, count } = plan;
  const repeat = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat : null;
  const joined = (fromMiddle: number) => (plan.shifts ? fromMiddle % 2 : 0);
  const along = (fromMiddle: number): AlongMatch => {
    if (!repeat) return { how: "free" };
    if (plan.lowestMotif === null)
      return { how: "level", series: `valance ${fields.valance}`, joined: joined(fromMiddle) };
    return {
      how: "motif-at",
      aboveFoot: plan.lowestMotif.plus(plan.hem),
      joined: joined(fromMiddle),
    };
  };
  const face = acrossCuts({
    piece: "valance",
    surface: "face",
    cloth: cloth.id,
    strips: plan.strips,
    cutWidth: plan.cutWidth,
    usableWidth: plan.usableWidth,
    height: plan.cutHeight,
    count,
    across: { how: "free" },
    mayTurn: repeat === null && cloth.mayTurn,
    patterned: isPatterned(cloth),
    along,
    because: `${p(plan.edge.deepest)} depth + ${p(plan.headingTurn)} heading + ${p(plan.hem)} ${plan.edge.arcs > 0 ? "seam" : "hem"}`,
  });
  const layers = layerCuts(plan.layers, count);
  return [...face, ...layers];
}

function materialsOf(
  fields: ValanceFields,
  plan: ValancePlan,
  context: ItemContext,
): MaterialNeed[] {
  const { units } = context;
  const { heading, board, count } = plan;
  const depth = printLength(heading.depth, units);
  const needs: MaterialNeed[] = [];
  if ("tape" in heading) {
    const tape =
      heading.heading === "gathered" ? "gathering tape" : `pencil-pleat tape, ${depth} deep`;
    needs.push(boughtLength(tape, heading.tape.times(count), units));
  } else {
    needs.push(boughtLength(`buckram, ${depth} deep`, plan.flat.times(count), units));
  }
  needs.push(
    hookTapeNeed(board, count, units),
    // A bed brings its own tester.
    ...(board.hangsOn ? [] : [boardOf(board, count, units)]),
  );
  needs.push(...lowerTrimNeeds(fields.trim, lowerRun(plan, units), count, context));
  return needs;
}

function boardOf({ length, returnEach }: Board, count: number, units: UnitSystem): MaterialNeed {
  return returnEach.isZero()
    ? boughtEach("batten", ` of ${printLength(length, units)}`, count)
    : boughtEach("board", ` of ${printSize([length, returnEach], units)}`, count);
}

/** Along the flat lower edge from end to end, curves followed, up to what can be marked. */
export function lowerRun({ flat, flatFront, flatEdge }: ValancePlan, units: UnitSystem): Length {
  if (flatEdge.arcs === 0) return flat;
  const step = finestStep(units);
  return Length.mm(flatEdge.runMm.toFixed(3)).plus(flat.minus(flatFront)).upTo(step);
}

function figuresOf(plan: ValancePlan): Record<string, number> {
  const { board, heading, strips, handbook } = plan;
  return {
    valances: plan.count,
    widthMm: board.length.toMm(),
    projectionMm: board.returnEach.toMm(),
    spanMm: board.span.toMm(),
    depthMm: board.depth.toMm(),
    ...(plan.edge.arcs > 0 ? { deepestMm: plan.edge.deepest.toMm(), arcs: plan.edge.arcs } : {}),
    flatWidthMm: plan.cutWidth.toMm(),
    widths: strips.widths,
    joins: strips.joins,
    ...(strips.strip ? { stripMm: strips.strip.toMm() } : {}),
    plainCutLengthMm: plan.cutHeight.toMm(),
    cutLengthMm: handbook.cutLength.toMm(),
    ...("pleats" in heading ? { pleats: heading.pleats, takeUpMm: heading.takeUp.toMm() } : {}),
    ...("boxes" in heading ? { boxes: heading.boxes, boxMm: heading.box.toMm() } : {}),
    ...("tape" in heading ? { tapeMm: heading.tape.toMm() } : {}),
    ...heightFigures(board, plan.edge.deepest),
  };
}
