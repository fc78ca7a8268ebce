import Fraction from "fraction.js";
import { printLength } from "../../units/printLength.ts";
import { areaCounts } from "../common/areaCounts.ts";
import { boughtEach } from "../common/boughtLength.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed } from "../itemKind.ts";
import { planRollerBlind, type RollerBlindPlan } from "./plan.ts";
import type { RollerBlindFields } from "./schema.ts";

export interface RollerBlindMade extends Made {
  readonly plan: RollerBlindPlan | null;
}

/**
 * A roller blind of the studio's cloth, in one piece: as it hangs between its brackets, with what is trimmed off when it is stiffened,
 * what stays on the roller, and the pocket of its bar (common practice, no source). Exact lengths.
 */
export function makeRollerBlind(fields: RollerBlindFields, context: ItemContext): RollerBlindMade {
  const notes = newNotes();
  const plan = planRollerBlind(fields, context, notes);
  const shared = noted(notes, ["cords", "fire"]);
  if (plan === null) return { ...NOTHING_CUT, ...shared, plan };
  const areaMm2 = plan.size.width.mm.mul(plan.size.drop.mm).mul(plan.count);
  return {
    figures: figuresOf(plan),
    cuts: [cutOf(plan)],
    materials: materialsOf(plan, context),
    handbook: [{ cloth: plan.cloth.id, length: plan.handbook.total }],
    makingCounts: {
      item: new Fraction(plan.count),
      width: new Fraction(plan.count),
      ...areaCounts(areaMm2),
    },
    ...shared,
    plan,
  };
}

function cutOf(plan: RollerBlindPlan): ItemCut {
  const { cloth, cutWidth, cutLength, railroaded, count } = plan;
  const repeat = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat : null;
  const series = `roller blinds ${plan.size.drop.mm.add(plan.onRoller.mm).toFraction()}`;
  const [width, height] = railroaded ? [cutLength, cutWidth] : [cutWidth, cutLength];
  return {
    piece: "roller blind",
    surface: "face",
    cloth: cloth.id,
    width,
    height,
    count,
    mayTurn: !railroaded && repeat === null && cloth.mayTurn,
    across: plan.motifCentred
      ? { how: "motif-at", fromLeft: cutWidth.dividedBy(2) }
      : { how: "free" },
    // Blinds of one drop show the same part of the pattern at the same height.
    along: repeat && !railroaded ? { how: "level", series, joined: 0 } : { how: "free" },
    because: "the cloth as it hangs, trimmings, what stays on the roller, the bar's pocket",
  };
}

function materialsOf(
  { size, clothWide, operation, count }: RollerBlindPlan,
  { units }: ItemContext,
): MaterialNeed[] {
  return [
    boughtEach("roller", ` of ${printLength(size.width, units)}, ${operation}`, count, "studio"),
    boughtEach("blind bar", ` of ${printLength(clothWide, units)}`, count),
  ];
}

function figuresOf(plan: RollerBlindPlan): Record<string, number> {
  const { size, handbook } = plan;
  return {
    blinds: plan.count,
    widthMm: size.width.toMm(),
    dropMm: size.drop.toMm(),
    clothWideMm: plan.clothWide.toMm(),
    cutWidthMm: plan.cutWidth.toMm(),
    plainCutLengthMm: plan.cutLength.toMm(),
    cutLengthMm: handbook.cutLength.toMm(),
    ...(size.hemHeight
      ? {
          hemAboveFloorMm: size.hemHeight.toMm(),
          headAboveFloorMm: size.hemHeight.plus(size.drop).toMm(),
        }
      : {}),
  };
}
