import { boughtAs } from "../../common/boughtLength.ts";
import { buttonCovers } from "../../common/welt/buttonCovers.ts";
import type { ItemContext, ItemCut, MaterialNeed } from "../../itemKind.ts";
import type { SeatPadFields } from "./schema.ts";

/** Tufting buttons of `count` pads: they hold each other through the pad, one above and one below. */
export function padButtons(
  fields: SeatPadFields,
  count: number,
  context: ItemContext,
): {
  /** On one side of one. */
  readonly each: number;
  readonly cuts: ItemCut[];
  readonly materials: MaterialNeed[];
} {
  const each = fields.buttons ?? 0;
  if (each === 0) return { each, cuts: [], materials: [] };
  const all = each * 2 * count;
  const facts = context.cloth(fields.cloth);
  const covers = buttonCovers({
    count: all,
    square: context.length("button-square"),
    cloth: fields.cloth,
    surface: "face",
    usableWidth: facts?.usableWidth ?? null,
    nap: facts?.nap ?? false,
    units: context.units,
  });
  const text = `${all} covered buttons, half of them below, with twine`;
  return { each, cuts: [covers], materials: [boughtAs("covered buttons", text, all)] };
}
