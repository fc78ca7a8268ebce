import Fraction from "fraction.js";
import { Length } from "../../units/length.ts";
import { printCloth, type UnitSystem } from "../../units/printLength.ts";
import type { MaterialNeed } from "../itemKind.ts";

/** The step that tapes, trims and the like are bought in: a quarter yard or ten centimetres. */
export function buyingStep(units: UnitSystem): Length {
  return units === "inches" ? Length.yards(new Fraction(1, 4)) : Length.cm(10);
}

/** A bought length, up to the buying step, as a material: tape, trim, buckram. */
export function boughtLength(
  what: string,
  length: Length,
  units: UnitSystem,
  more: { readonly cloth?: string; readonly by?: "studio" | "maker" } = {},
): MaterialNeed {
  const buy = length.upTo(buyingStep(units));
  const inches = units === "inches";
  return {
    what,
    cloth: more.cloth ?? null,
    amount: buy.over(inches ? Length.yards(1) : Length.mm(1000)),
    unit: inches ? "yard" : "metre",
    text: `${printCloth(buy, units)} of ${what}`,
    by: more.by ?? "maker",
  };
}

/** Bought by the piece, its noun in the right number: `1 foot ring, 14″`, `2 foot rings, 14″`. */
export function boughtEach(
  noun: string,
  rest: string,
  count: number,
  by: "studio" | "maker" = "maker",
): MaterialNeed {
  return boughtPieces(`${noun}${count === 1 ? "" : "s"}${rest}`, count, by);
}

/** Bought by the piece. */
export function boughtPieces(
  what: string,
  count: number,
  by: "studio" | "maker" = "maker",
): MaterialNeed {
  return boughtAs(what, `${count} ${what}`, count, by);
}

/** Bought by the piece, and said in words of its own: `2 zips of 18″`. */
export function boughtAs(
  what: string,
  text: string,
  count: number,
  by: "studio" | "maker" = "maker",
): MaterialNeed {
  return { what, cloth: null, amount: new Fraction(count), unit: "piece", text, by };
}

/** What only the thing itself can tell the amount of: it is named, never counted. */
export function asNeeded(what: string): MaterialNeed {
  return { what, cloth: null, amount: new Fraction(1), unit: "piece", text: what, by: "maker" };
}
