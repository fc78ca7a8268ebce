import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { boughtAs } from "../common/boughtLength.ts";
import type { ItemContext, MaterialNeed, WorkingLine } from "../itemKind.ts";
import type { CushionCover } from "./cover.ts";
import type { CushionFields } from "./schema.ts";

/** What a cushion is filled with. */
export interface CushionInsert {
  readonly filling: "feather" | "fibre" | "foam";
  /** How much larger than the cover it is, each way. */
  readonly over: Length;
  /** Width and height, of a box its thickness too. */
  readonly size: readonly [Length, Length, ...Length[]];
}

/** An insert a little larger than its cover, so that it stays full; foam is cut to size. Foam in a box, feather else, where nothing is said. */
export function insertOf(
  fields: CushionFields,
  { sizes, boxing }: CushionCover,
  context: ItemContext,
): CushionInsert {
  const [width, height] = sizes.stated;
  const filling = fields.filling ?? (sizes.form === "box" ? "foam" : "feather");
  const over = filling === "foam" ? Length.zero : context.length(`insert-over-${filling}`);
  return {
    filling,
    over,
    size: [width.plus(over), height.plus(over), ...(boxing ? [boxing.thickness] : [])],
  };
}

/** The inserts to buy. */
export function insertNeed(
  { filling, size }: CushionInsert,
  count: number,
  context: ItemContext,
): MaterialNeed {
  const words = printSize(size, context.units);
  return boughtAs(
    `${filling} insert ${words}`,
    `${count} ${filling} ${count === 1 ? "insert" : "inserts"} ${words}`,
    count,
    "studio",
  );
}

export function insertWorking(
  { filling, over, size }: CushionInsert,
  { sizes }: CushionCover,
  context: ItemContext,
): WorkingLine {
  const { units } = context;
  return {
    what: "Insert",
    sum: `${printSize(sizes.stated, units)} cover + ${printLength(over, units)} each way, ${filling}`,
    result: printSize(size, units),
    rounded: null,
  };
}
