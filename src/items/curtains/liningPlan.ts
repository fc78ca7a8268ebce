import type Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { Notes } from "../notes.ts";
import { leastWidths, widthsText } from "./widths.ts";

/** A lining or interlining of one curtain. */
export interface LayerPlan {
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
  readonly surface: "lining" | "interlining";
  readonly cloth: ClothFacts;
  readonly panelFlat: Length;
  readonly drop: Length;
  readonly join: Length;
  readonly halves: boolean;
}

/**
 * A lining finishes in from each side and up from the hem; its widths are the least that reach its own flat width. Interlining lies
 * edge to edge inside the turnings: as wide as the panel and as long as the drop.
 */
export function planLayer(input: LayerInput, context: ItemContext, notes: Notes): LayerPlan | null {
  const { surface, cloth, panelFlat, drop, join } = input;
  const p = (length: Length) => printLength(length, context.units);
  const usableWidth = cloth.usableWidth;
  if (usableWidth === null) {
    notes.diagnostics.push(
      diagnostic(
        context.place([surface]),
        "cloth-without-width",
        `${cloth.name} has no width, so its widths cannot be counted.`,
        {
          actual: cloth.id,
          expected: "a usable width",
          hint: `Write width: in the card of ${cloth.id}.`,
        },
      ),
    );
    return null;
  }
  const lining = surface === "lining";
  // Only what is used is asked for, since a default that was used is listed.
  const allowance = (name: string) => (lining ? context.length(name) : Length.zero);
  const inside = allowance("lining-in");
  const up = allowance("lining-up");
  const finishedWidth = lining ? panelFlat.minus(inside.times(2)) : panelFlat;
  const finishedLength = lining ? drop.minus(up) : drop;
  const turn = allowance("lining-side-turn");
  const hem = allowance("lining-hem");
  const heading = allowance("lining-heading");
  const flat = lining ? finishedWidth.plus(turn.times(2)) : finishedWidth;
  const cutLength = lining ? finishedLength.plus(hem).plus(heading) : finishedLength;
  const widthsEach = leastWidths(flat, usableWidth, join, input.halves);
  if (widthsEach === null) return null;
  const name = lining ? "Lining" : "Interlining";
  const because = lining
    ? `${p(finishedLength)} finished + ${p(hem)} hem + ${p(heading)} heading`
    : `${p(drop)} drop`;
  notes.working.push(
    {
      what: `${name}, widths a curtain`,
      sum: lining
        ? `(${p(panelFlat)} panel − 2 × ${p(inside)} + 2 × ${p(turn)} turnings) on ${p(usableWidth)}, ${p(join)} a join on each piece`
        : `${p(panelFlat)} panel on ${p(usableWidth)}, ${p(join)} a join on each piece`,
      result: widthsText(widthsEach),
      rounded: input.halves ? "up to the half width" : "up to the whole width",
    },
    {
      what: `${name}, cut length`,
      sum: lining ? `${p(drop)} drop − ${p(up)} + ${p(hem)} hem + ${p(heading)} heading` : because,
      result: p(cutLength),
      rounded: null,
    },
  );
  return {
    surface,
    cloth,
    usableWidth,
    widthsEach,
    cutLength,
    finishedWidth,
    finishedLength,
    because,
  };
}
