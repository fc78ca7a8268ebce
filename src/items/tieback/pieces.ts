import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { boughtEach } from "../common/boughtLength.ts";
import { centredPlace } from "../common/join/centredMotif.ts";
import { handbookRows } from "../common/join/handbookRows.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import { trimNeed } from "../common/trim.ts";
import { weltCut } from "../common/welt/edgeWelt.ts";
import { cordNeed } from "../common/welt/welt.ts";
import type { ItemContext, ItemCut, Made, MaterialNeed } from "../itemKind.ts";
import { planTieback, type TiebackPlan } from "./plan.ts";
import type { TiebackFields } from "./schema.ts";

export interface TiebackMade extends Made {
  readonly plan: TiebackPlan | null;
}

/** Tie-backs: front and back cut from the rectangle round their shape, seams included, over stiff buckram. */
export function makeTieback(fields: TiebackFields, context: ItemContext): TiebackMade {
  const notes = newNotes();
  const plan = planTieback(fields, context, notes);
  const shared = { ...noted(notes, ["cords", "fire", "small-parts"]), plan };
  if (plan === null) {
    return { ...NOTHING_CUT, ...shared };
  }
  const cuts = cutsOf(fields, plan, context);
  return {
    figures: {
      tiebacks: plan.count,
      lengthMm: plan.length.toMm(),
      depthMm: plan.depth.toMm(),
      heightMm: plan.height.toMm(),
      cutWidthMm: plan.cutWidth.toMm(),
      cutHeightMm: plan.cutHeight.toMm(),
      perimeterMm: plan.perimeter.toMm(),
      ...(plan.upperRadiusMm === null ? {} : { upperRadiusMm: plan.upperRadiusMm }),
      ...(plan.lowerRadiusMm === null ? {} : { lowerRadiusMm: plan.lowerRadiusMm }),
      ...(plan.welt ? { weltMm: plan.welt.total.toMm() } : {}),
    },
    cuts,
    materials: materialsOf(fields, plan, context),
    handbook: handbookOf(cuts, context),
    makingCounts: { item: new Fraction(plan.count) },
    ...shared,
  };
}

function cutsOf(fields: TiebackFields, plan: TiebackPlan, context: ItemContext): ItemCut[] {
  const p = (length: Length) => printLength(length, context.units);
  const because = `${printSize([plan.length, plan.height], context.units)} + 2 × ${p(plan.seam)} seams each way`;
  const { across, along } = centredPlace(
    plan.cloth,
    plan.cutWidth,
    plan.cutHeight,
    plan.motifAboveFoot,
  );
  const free = { how: "free" } as const;
  const back = context.cloth(fields.back ?? fields.cloth);
  const shared = { width: plan.cutWidth, height: plan.cutHeight, count: plan.count, because };
  const cuts: ItemCut[] = [
    {
      ...shared,
      piece: "tie-back, front",
      surface: "face",
      cloth: plan.cloth.id,
      mayTurn: plan.cloth.repeat === null && plan.cloth.mayTurn,
      across: plan.motifCentred ? across : free,
      along: plan.motifCentred ? along : free,
    },
  ];
  if (back)
    cuts.push({
      ...shared,
      piece: "tie-back, back",
      surface: back.type === "lining" ? "lining" : "back",
      cloth: back.id,
      mayTurn: back.mayTurn,
      across: free,
      along: free,
    });
  const inside = fields.interlining ? context.cloth(fields.interlining) : null;
  if (inside)
    cuts.push({
      ...shared,
      piece: "tie-back, interlining",
      surface: "interlining",
      cloth: inside.id,
      width: plan.length,
      height: plan.height,
      mayTurn: inside.mayTurn,
      across: free,
      along: free,
      because: "finished size",
    });
  if (plan.welt) cuts.push(weltCut(plan.welt, context));
  return cuts;
}

/** Rows of its pieces for each cloth; a centred row goes up to whole repeats. */
function handbookOf(
  cuts: readonly ItemCut[],
  context: ItemContext,
): { cloth: string; length: Length }[] {
  const cloths = [...new Set(cuts.map((cut) => cut.cloth))];
  return cloths.flatMap((id) => {
    const cloth = context.cloth(id);
    const usable = cloth?.usableWidth;
    if (!usable) return [];
    const rows = handbookRows(
      cuts
        .filter((cut) => cut.cloth === id)
        .flatMap((cut) =>
          Array.from({ length: cut.count }, () => ({
            width: cut.width,
            length:
              cut.along.how === "motif-at" && cloth.repeat
                ? cut.height.upTo(cloth.repeat.up)
                : cut.height,
          })),
        ),
      usable,
    );
    return rows ? [{ cloth: id, length: rows }] : [];
  });
}

function materialsOf(
  fields: TiebackFields,
  plan: TiebackPlan,
  context: ItemContext,
): MaterialNeed[] {
  const { units } = context;
  const size = printSize([plan.length, plan.height], units);
  const needs: MaterialNeed[] = [
    boughtEach("piece", ` of stiff buckram, ${size}`, plan.count),
    boughtEach("tie-back ring", "", 2 * plan.count),
    boughtEach("tie-back hook", "", plan.count),
  ];
  if (plan.welt) needs.push(cordNeed(plan.welt.total, units));
  if (fields.trim) needs.push(trimNeed(fields.trim, plan.lowerRun, plan.count, context));
  return needs;
}
