import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { boughtEach, boughtLength } from "../common/boughtLength.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import { trimNeed } from "../common/trim.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed } from "../itemKind.ts";
import { cutPanel } from "./development.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import { mark } from "./mark.ts";
import { planLampshade } from "./plan.ts";
import type { LampshadeFields } from "./schema.ts";

export interface LampshadeMade extends Made {
  readonly plan: LampshadePlan | null;
}

/**
 * A lampshade. Smooth: drum = way round + lap by height + turnings; cone and empire from the net of their frustum. Pleated or
 * gathered: a strip, way round the foot ring times fullness.
 */
export function makeLampshade(fields: LampshadeFields, context: ItemContext): LampshadeMade {
  const notes = newNotes();
  const plan = planLampshade(fields, context, notes);
  const shared = { ...noted(notes, ["lamp-heat", "fire"]), plan };
  if (plan === null) {
    return { ...NOTHING_CUT, ...shared };
  }
  return {
    figures: figuresOf(plan),
    cuts: plan.pleated ? [...plan.pleated.strip.cuts] : [cutOf(plan, context)],
    materials: plan.pleated ? frameOf(fields, plan, context) : materialsOf(fields, plan, context),
    handbook: [{ cloth: plan.cloth.id, length: plan.handbook }],
    makingCounts: { item: new Fraction(plan.count) },
    ...shared,
  };
}

function cutOf(plan: LampshadePlan, context: ItemContext): ItemCut {
  const p = (length: Length) => printLength(length, context.units);
  const { cloth, cutWidth, cutHeight, panels, net } = plan;
  const name = panels > 1 ? "shade panel" : "shade";
  const because = net
    ? `net of the ${plan.form}, ${p(plan.lap)} lap and 2 × ${p(plan.turn)} turned included`
    : `π × ${p(plan.foot)}${panels > 1 ? ` ÷ ${panels}` : ""} + ${p(plan.lap)} lap, by ${p(plan.height)} + 2 × ${p(plan.turn)} turned`;
  const patterned = cloth.repeat !== null && cloth.repeat.match !== "free";
  const shared = {
    surface: "face",
    cloth: cloth.id,
    count: panels * plan.count,
  };
  if (plan.railroaded) {
    return {
      ...shared,
      piece: `${name}, run sideways`,
      width: cutHeight,
      height: cutWidth,
      mayTurn: false,
      across: { how: "free" },
      along: { how: "free" },
      because: `${because}; cloth run sideways`,
    };
  }
  // Panels side by side must meet level at their seams even where no motif is centred.
  const level = patterned && panels > 1;
  return {
    ...shared,
    piece: name,
    width: cutWidth,
    height: cutHeight,
    // A quarter turn is for plain cloth; a net may lie either way on it too.
    mayTurn: cloth.repeat === null && cloth.mayTurn,
    across:
      plan.motifCentred && cloth.repeat?.across
        ? { how: "motif-at", fromLeft: plan.frontX }
        : { how: "free" },
    along:
      patterned && (plan.motifCentred || level)
        ? { how: "motif-at", aboveFoot: plan.frontAboveFoot, joined: 0 }
        : { how: "free" },
    because,
  };
}

function materialsOf(
  fields: LampshadeFields,
  plan: LampshadePlan,
  context: ItemContext,
): MaterialNeed[] {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const { count, panels } = plan;
  const bare = backingSize(plan, context);
  const round = plan.foot.plus(plan.top).times(new Fraction(22, 7));
  const needs: MaterialNeed[] = [
    boughtEach(
      "piece",
      ` of self-adhesive styrene, ${printSize(bare, units)}, flame-retardant grade`,
      panels * count,
    ),
    boughtEach(
      "top ring",
      `, ${p(plan.top)}, ${plan.form === "drum" ? "" : "the smaller, "}${fields.fitting ? `with ${fields.fitting} fitting` : "fitting to be settled"}`,
      count,
    ),
    boughtEach("foot ring", `, ${p(plan.foot)}`, count),
    boughtLength(
      "double-sided tape for rings and seam",
      round.plus(plan.slant).times(count),
      units,
    ),
  ];
  // Round both rings: two runs.
  if (fields.trim) needs.push(trimNeed(fields.trim, round.dividedBy(2), 2 * count, context));
  return needs;
}

/** What a soft shade is made on, and the braid round its rings. */
function frameOf(
  fields: LampshadeFields,
  plan: LampshadePlan,
  context: ItemContext,
): MaterialNeed[] {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const rings = plan.foot.equals(plan.top)
    ? `rings ${p(plan.foot)}`
    : `foot ring ${p(plan.foot)}, top ring ${p(plan.top)}`;
  const round = (plan.pleated?.roundFoot ?? plan.foot).plus(plan.pleated?.roundTop ?? plan.top);
  return [
    boughtEach(
      "frame",
      ` with struts, ${rings}, ${p(plan.height)} upright, ${fields.fitting ? `${fields.fitting} fitting` : "fitting to be settled"}`,
      plan.count,
    ),
    ...(fields.trim ? [trimNeed(fields.trim, round.dividedBy(2), 2 * plan.count, context)] : []),
  ];
}

/** The backing is the bare net, without lap and turnings: the rectangle that holds it, up to what can be marked. */
export function backingSize(
  plan: LampshadePlan,
  context: Pick<ItemContext, "units">,
): [Length, Length] {
  if (!plan.net) return [plan.cutWidth.minus(plan.lap), plan.height];
  const bare = cutPanel(plan.net, plan.panels, 0, 0);
  return [mark(bare.width, context), mark(bare.height, context)];
}

function figuresOf(plan: LampshadePlan): Record<string, number> {
  const { net } = plan;
  return {
    lampshades: plan.count,
    footMm: plan.foot.toMm(),
    topMm: plan.top.toMm(),
    heightMm: plan.height.toMm(),
    panels: plan.panels,
    cutWidthMm: plan.cutWidth.toMm(),
    cutHeightMm: plan.cutHeight.toMm(),
    ...(net
      ? {
          slantMm: net.slant,
          innerRadiusMm: net.innerRadius,
          outerRadiusMm: net.outerRadius,
          angleDeg: net.angleDeg,
        }
      : {}),
    sideAreaMm2: plan.areaMm2,
    ...(plan.pleated
      ? {
          flatMm: plan.pleated.strip.flat.toMm(),
          widths: plan.pleated.strip.widths,
          ...(plan.pleated.pleats
            ? {
                pleats: plan.pleated.pleats.count,
                takeUpMm: plan.pleated.pleats.takeUp.toMm(),
              }
            : {}),
        }
      : {}),
  };
}
