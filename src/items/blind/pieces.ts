import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { areaCounts } from "../common/areaCounts.ts";
import { boughtEach } from "../common/boughtLength.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import type { ItemContext, Made, MaterialNeed } from "../itemKind.ts";
import { cutsOf } from "./cuts.ts";
import { layerStrips } from "./layers.ts";
import { type BlindPlan, planBlind } from "./plan.ts";
import type { BlindFields } from "./schema.ts";

export interface BlindMade extends Made {
  readonly plan: BlindPlan | null;
}

/**
 * A Roman blind: cut = finished size and turnings; wider than the cloth, whole widths in the middle and equal strips at the sides;
 * folds in an odd number of equal sections. Between walls sizes go down, cuts go up to whole repeats.
 */
export function makeBlind(fields: BlindFields, context: ItemContext): BlindMade {
  const notes = newNotes();
  const plan = planBlind(fields, context, notes);
  const shared = noted(notes, ["cords", "fire"]);
  if (plan === null) {
    return { ...NOTHING_CUT, ...shared, plan };
  }
  const widths = plan.strips.widths * plan.count;
  const areaMm2 = plan.size.width.mm.mul(plan.size.drop.mm).mul(plan.count);
  return {
    figures: figuresOf(plan),
    cuts: cutsOf(plan),
    materials: materialsOf(plan, context),
    handbook: [
      { cloth: plan.cloth.id, length: plan.handbook.total },
      ...plan.layers.map((layer) => ({
        cloth: layer.cloth.id,
        length: layer.height.times(layerStrips(layer, plan.seam).widths * plan.count),
      })),
    ],
    makingCounts: {
      item: new Fraction(plan.count),
      width: new Fraction(widths),
      drop: new Fraction(widths),
      ...areaCounts(areaMm2),
    },
    ...shared,
    plan,
  };
}

function materialsOf(plan: BlindPlan, context: ItemContext): MaterialNeed[] {
  const p = (length: Length) => printLength(length, context.units);
  const { count, sections } = plan;
  return [
    boughtEach("blind rod", ` of ${p(plan.rodLength)}`, sections.rods * count),
    boughtEach("bottom bar", ` of ${p(plan.rodLength)}`, count),
    boughtEach("headrail", ` of ${p(plan.size.width)}, ${plan.operation}`, count, "studio"),
  ];
}

function figuresOf(plan: BlindPlan): Record<string, number> {
  const { size, sections, strips, handbook } = plan;
  return {
    blinds: plan.count,
    widthMm: size.width.toMm(),
    dropMm: size.drop.toMm(),
    cutWidthMm: plan.cutWidth.toMm(),
    plainCutLengthMm: plan.plainCut.toMm(),
    cutLengthMm: handbook.cutLength.toMm(),
    widths: strips.widths,
    joins: strips.joins,
    ...(strips.strip ? { stripMm: strips.strip.toMm() } : {}),
    sections: sections.sections,
    sectionMm: sections.section.toMm(),
    ...(plan.hobble ? { faceSectionMm: plan.hobble.faceSection.toMm() } : {}),
    rods: sections.rods,
    rodLengthMm: plan.rodLength.toMm(),
    ...(sections.rods > 0 ? { topRodFromTopMm: sections.topRodFromTop.toMm() } : {}),
    stackDepthMm: sections.stackDepth.toMm(),
    ...(size.hemHeight
      ? {
          hemAboveFloorMm: size.hemHeight.toMm(),
          headAboveFloorMm: size.hemHeight.plus(size.drop).toMm(),
        }
      : {}),
  };
}
