import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { whichStripe } from "../common/motifNoun.ts";
import { blankUnit, filledGroups, linesOf } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import { backingSize, type LampshadeMade } from "./pieces.ts";
import type { Pleated } from "./pleated.ts";
import type { LampshadeFields } from "./schema.ts";

/** The words beside a lampshade's drawing. No price, no client. */
export function lampshadeSheet(
  fields: LampshadeFields,
  made: LampshadeMade,
  context: DrawingContext,
): ItemSheet {
  const { plan } = made;
  if (plan === null) return { groups: [], checks: [], signs: [] };
  const p = (length: Length) => printLength(length, context.units);
  const mm = (value: number) => p(Length.mm(value.toFixed(4)));
  const blank = blankUnit(context.units);
  if (plan.pleated) return softSheet(fields, plan, plan.pleated, context);
  const { net, panels, count } = plan;
  const stripe = whichStripe(plan.cloth, context.units);
  const groups: SheetGroup[] = [
    { heading: "Cloth", lines: clothLines(plan.cloth.id, context) },
    {
      heading: "Finished",
      lines: linesOf([
        `${count === 1 ? `One ${plan.form} shade` : `${count} ${plan.form} shades`}: foot ring ${p(plan.foot)}${net ? `, top ring ${p(plan.top)}` : ""}, ${p(plan.height)} upright.`,
        net && `Slant ${p(plan.slant)}.`,
        fields.fitting && `Ring with ${fields.fitting} fitting.`,
      ]),
    },
    {
      heading: "Cut",
      lines: linesOf([
        net
          ? `${panels * count} from ${printSize([plan.cutWidth, plan.cutHeight], context.units)}, drawn from one point: radii ${mm(net.innerRadius)} and ${mm(net.outerRadius)}, ${(net.angleDeg / panels).toFixed(1)}°.`
          : `${panels * count} of ${printSize([plan.cutWidth, plan.cutHeight], context.units)}.`,
        `${p(plan.lap)} lap at one upright edge, ${p(plan.turn)} turned over each ring${net ? ", outside the radii" : ", included"}.`,
        panels > 1 && `${panels} panels, seams evenly round the shade, one at the back.`,
        plan.railroaded && "Cloth run sideways: its length goes round the shade.",
      ]),
    },
    {
      heading: "Backing",
      lines: [
        `Self-adhesive styrene, flame-retardant grade: the bare net without lap and turnings, ${panels * count} from ${printSize(backingSize(plan, context), context.units)}.`,
      ],
    },
    {
      heading: "Placing",
      lines: linesOf([
        plan.motifCentred
          ? stripe
            ? `Stripe in the middle, opposite the seam: ${stripe}.`
            : "Motif half-way up, opposite the seam; its top up."
          : plan.cloth.repeat && "As the pattern falls, its top up.",
        net &&
          plan.cloth.repeat &&
          "Upright opposite the seam; it leans towards the seam on both sides.",
      ]),
    },
    {
      heading: "Edges",
      lines: fields.trim
        ? [`${context.cloth(fields.trim)?.name ?? fields.trim} round both rings.`]
        : ["Turned over the rings."],
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups: filledGroups(groups),
    checks: [
      { text: "Cloth checked for flaws", blank: null },
      { text: "Rings measured across, top", blank },
      { text: "Rings measured across, foot", blank },
      { text: "Seam upright and at the back", blank: null },
      { text: "Greatest wattage written on the shade", blank: "W" },
    ],
    signs: linesOf([
      "Dashed: edge of the ring; outside it the cloth is turned over.",
      "Long line with two dots: seam, the lap beside it.",
      "Long and short: middle of the front. Arrow: up the cloth.",
      plan.motifCentred && `Lozenge: middle of the ${stripe ? "stripe" : "motif"}.`,
    ]),
  };
}

/** The words of a pleated or gathered shade. */
function softSheet(
  fields: LampshadeFields,
  plan: LampshadePlan,
  pleated: Pleated,
  context: DrawingContext,
): ItemSheet {
  const p = (length: Length) => printLength(length, context.units);
  const blank = blankUnit(context.units);
  const { strip, pleats, style } = pleated;
  const sloping = plan.top.isLessThan(plan.foot);
  const pleat = style === "box-pleat" ? "box pleats" : "knife pleats, all one way";
  const groups: SheetGroup[] = [
    { heading: "Cloth", lines: clothLines(plan.cloth.id, context) },
    {
      heading: "Finished",
      lines: linesOf([
        `${plan.count === 1 ? `One ${plan.form} shade` : `${plan.count} ${plan.form} shades`}: foot ring ${p(plan.foot)}${sloping ? `, top ring ${p(plan.top)}` : ""}, ${p(plan.height)} upright.`,
        sloping && `Slant ${p(plan.slant)}.`,
        `Round the foot ${p(pleated.roundFoot)}${sloping ? `, round the top ${p(pleated.roundTop)}` : ""}.`,
        fields.fitting && `Ring with ${fields.fitting} fitting.`,
      ]),
    },
    {
      heading: "Cut",
      lines: linesOf([
        ...strip.cuts.map(
          (c) => `${c.count} × ${c.piece}, ${printSize([c.width, c.height], context.units)}.`,
        ),
        strip.sideways && "Cloth run sideways: the strip lies along the bolt.",
        `Of ${p(strip.cut)}: ${p(strip.drop)} slant, ${p(strip.hem)} turned over each ring.`,
        `${p(strip.flat)} flat needed, ${p(strip.runs[0]?.joined ?? strip.flat)} joined; joins and closing seam hidden in the ${pleats ? "pleats" : "gathers"}.`,
      ]),
    },
    {
      heading: "Make",
      lines: pleats
        ? linesOf([
            `${pleats.count} ${pleat}, ${p(pleats.foot)} apart at the foot${sloping ? `, ${p(pleats.top)} at the top, where they lie closer` : ""}.`,
            `Each takes up ${p(pleats.takeUp)} behind itself.`,
          ])
        : [
            `Gathered ${strip.fullness.toString()} times at the foot ring${sloping ? ", the same cloth closer at the top" : ""}.`,
          ],
    },
    {
      heading: "Edges",
      lines: fields.trim
        ? [`${context.cloth(fields.trim)?.name ?? fields.trim} round both rings.`]
        : ["Turned over the rings and stitched to them."],
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups,
    checks: [
      { text: "Cloth checked for flaws", blank: null },
      { text: "Rings measured across, top", blank },
      { text: "Rings measured across, foot", blank },
      {
        text: pleats ? "Pleats even round both rings" : "Gathers even round both rings",
        blank: null,
      },
      { text: "Greatest wattage written on the shade", blank: "W" },
    ],
    signs: [
      "Dashed: line of the ring; beyond it the cloth is turned over.",
      "Long line with two dots: join. Arrow: up the cloth.",
    ],
  };
}
