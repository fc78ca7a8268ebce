import type Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { clothWidth } from "../clothWidth.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { Notes } from "../notes.ts";
import { leastWidths, widthsText } from "./widths.ts";

/** What lies behind the face, from it to the glass. */
export type Layer = "interlining" | "blackout" | "lining";

/** A lining, a blackout or an interlining of one curtain. */
export interface LayerPlan {
  readonly layer: Layer;
  /** A blackout counts among the linings wherever surfaces are told apart. */
  readonly surface: "lining" | "interlining";
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly widthsEach: Fraction;
  readonly cutLength: Length;
  readonly finishedWidth: Length;
  readonly finishedLength: Length;
  readonly because: string;
}

export interface LayerInput {
  readonly layer: Layer;
  readonly cloth: ClothFacts;
  readonly panelFlat: Length;
  readonly drop: Length;
  readonly join: Length;
  readonly halves: boolean;
}

/**
 * A lining finishes in from each side and up from the hem; its widths are the least that reach its own flat width. Interlining lies
 * edge to edge inside the turnings: as wide as the panel and as long as the drop. A blackout lies between the two, as large as the
 * lining finishes, its raw edges loose but for the heading, which catches it (common practice, no source).
 */
export function planLayer(input: LayerInput, context: ItemContext, notes: Notes): LayerPlan | null {
  const { layer, cloth, panelFlat, drop, join } = input;
  const p = (length: Length) => printLength(length, context.units);
  const usableWidth = clothWidth(cloth, layer, "its widths cannot be counted", context, notes);
  if (usableWidth === null) return null;
  const within = layer !== "interlining";
  const hemmed = layer === "lining";
  // Only what is used is asked for, since a default that was used is listed.
  const allowance = (name: string, used: boolean) => (used ? context.length(name) : Length.zero);
  const inside = allowance("lining-in", within);
  const up = allowance("lining-up", within);
  const finishedWidth = panelFlat.minus(inside.times(2));
  const finishedLength = drop.minus(up);
  const turn = allowance("lining-side-turn", hemmed);
  const hem = allowance("lining-hem", hemmed);
  const heading = allowance("lining-heading", within);
  const flat = finishedWidth.plus(turn.times(2));
  const cutLength = finishedLength.plus(hem).plus(heading);
  const widthsEach = leastWidths(flat, usableWidth, join, input.halves);
  if (widthsEach === null) return null;
  const name = { lining: "Lining", blackout: "Blackout", interlining: "Interlining" }[layer];
  const because = {
    lining: `${p(finishedLength)} finished + ${p(hem)} hem + ${p(heading)} heading`,
    blackout: `${p(finishedLength)} finished, raw edges + ${p(heading)} heading`,
    interlining: `${p(drop)} drop`,
  }[layer];
  notes.working.push(
    {
      what: `${name}, widths a curtain`,
      sum: within
        ? `(${p(panelFlat)} panel − 2 × ${p(inside)}${hemmed ? ` + 2 × ${p(turn)} turnings` : ""}) on ${p(usableWidth)}, ${p(join)} a join on each piece`
        : `${p(panelFlat)} panel on ${p(usableWidth)}, ${p(join)} a join on each piece`,
      result: widthsText(widthsEach),
      rounded: input.halves ? "up to the half width" : "up to the whole width",
    },
    {
      what: `${name}, cut length`,
      sum: within
        ? `${p(drop)} drop − ${p(up)}${hemmed ? ` + ${p(hem)} hem` : ""} + ${p(heading)} heading`
        : because,
      result: p(cutLength),
      rounded: null,
    },
  );
  return {
    layer,
    surface: layer === "interlining" ? "interlining" : "lining",
    cloth,
    usableWidth,
    widthsEach,
    cutLength,
    finishedWidth,
    finishedLength,
    because,
  };
}
