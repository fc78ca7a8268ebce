import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { type EdgeWelt, edgeWelt, weltWorking } from "../common/welt/edgeWelt.ts";
import { cordNeed } from "../common/welt/welt.ts";
import type { ItemContext, MaterialNeed, WorkingLine } from "../itemKind.ts";
import { perimeterOf } from "./boxing.ts";
import type { CushionCover } from "./cover.ts";
import type { CushionFields } from "./schema.ts";

/** The welt round a cushion: round its edge once, both faces of a box, both ends of a bolster; null without one. */
export function cushionWelt(
  fields: CushionFields,
  cover: CushionCover,
  context: ItemContext,
): EdgeWelt | null {
  const { form, bolster, seam } = cover.sizes;
  const round = perimeterOf(cover.plate);
  const edges = bolster?.edges ?? (form === "box" ? round.times(2) : round);
  return edgeWelt(fields, context, seam, edges, form === "box" || bolster ? 2 : 1);
}

/** How its length and its cloth come about. */
export function cushionWeltWorking(
  welt: EdgeWelt,
  cover: CushionCover,
  context: ItemContext,
): WorkingLine[] {
  const { form, bolster, count } = cover.sizes;
  const p = (l: Length) => printLength(l, context.units);
  const sum = bolster
    ? `2 × ${p(welt.perimeter.dividedBy(2))} round each end`
    : form === "box"
      ? `2 × (${onceRound(cover, context)}), round both faces`
      : onceRound(cover, context);
  return weltWorking(welt, count, context, sum);
}

function onceRound({ plate }: CushionCover, context: ItemContext): string {
  const p = (l: Length) => printLength(l, context.units);
  if (plate.round) return `${p(perimeterOf(plate))} round its edge`;
  if (plate.front.equals(plate.back)) return `2 × (${p(plate.front)} + ${p(plate.side)})`;
  return `${p(plate.front)} front + ${p(plate.back)} back + 2 × ${p(plate.side)}`;
}

/** Cord for the welt, and for the long folds of a square bolster; up to the buying step. */
export function cushionCord(
  welt: EdgeWelt,
  cover: CushionCover,
  context: ItemContext,
): MaterialNeed {
  const { bolster, count } = cover.sizes;
  const folds = (bolster?.foldCord ?? Length.zero).times(count);
  return cordNeed(welt.total.plus(folds), context.units);
}
